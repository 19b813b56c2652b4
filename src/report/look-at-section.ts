import { lookAtList } from '../study/look-at-list.ts';
import type { StudyLook } from '../study/study.ts';
import { pageWords } from '../words/page.ts';
import type { Tool } from '../words/rule-words.ts';
import { toolWords } from '../words/tool-words.ts';
import { type Block, type CheckItem, paragraph, type Section } from './block.ts';
import { type PageContext, partNames, sayIn } from './page-context.ts';

const words = pageWords.lookAt;

/** What could not be told, turned round: a list to print and to tick off on site, what settles most first. */
export function lookAtSection(page: PageContext): Section {
  const looks = page.study.lookAt ?? lookAtList(page.study.findings);
  const blocks: readonly Block[] =
    looks.length === 0
      ? [paragraph(words.none)]
      : [paragraph(words.intro), { is: 'checklist', items: looks.map((look) => item(page, look)) }];
  return { id: 'look-at', heading: words.heading, blocks };
}

function item(page: PageContext, look: StudyLook): CheckItem {
  const bring = sayIn(page, toolWords[look.tool as Tool] ?? '');
  const titles = page.study.findings.filter((f) => look.settles.includes(f.id)).map((f) => f.title);
  const where = [partNames(page, look.at), bring === '' ? '' : sayIn(page, words.bring, { bring })];
  return {
    text: look.text,
    at: where.filter((t) => t !== '').join('. '),
    decides: sayIn(page, words.decides, { titles: [...new Set(titles)].join('; ') }),
  };
}
