import type { SiteHeader } from '../../site/site.ts';

/** How owners write the documents that editions matter of. */
const names: readonly { readonly document: RegExp; readonly typed: RegExp }[] = [
  { document: /^NFPA 70\b/, typed: /\bnfpa\s*70\b|\bnec\b|national electrical code/i },
  { document: /^NFPA 780\b/, typed: /\bnfpa\s*780\b/i },
  { document: /^TIA-222\b/, typed: /\btia.?222/i },
  { document: /^IEC 62305-3\b/, typed: /\b62305(?:-3)?\b/ },
  { document: /^IEC 60364/, typed: /\b60364(?:-5-54)?\b/ },
  { document: /^IEC 60728-11\b/, typed: /\b60728-11\b/ },
  { document: /^BS 7671\b/, typed: /\b7671\b/ },
];

/** The edition of a document that is adopted where the site is, as typed under `code:`; null: nobody typed it. */
export function adoptedEdition(header: Pick<SiteHeader, 'codes'>, document: string): string | null {
  const typed = names.find((n) => n.document.test(document))?.typed;
  if (typed === undefined) return null;
  const found = (header.codes ?? []).find((c) => typed.test(c.document));
  return found?.edition ?? /[A-H]$|(?<=[: ])(?:19|20)\d\d/.exec(found?.document ?? '')?.[0] ?? null;
}

/** Its year; null also where the edition is a letter or another word. */
export function adoptedYear(header: Pick<SiteHeader, 'codes'>, document: string): number | null {
  const year = /\b(?:19|20)\d\d\b/.exec(adoptedEdition(header, document) ?? '')?.[0];
  return year === undefined ? null : Number(year);
}
