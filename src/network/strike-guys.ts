import type { BondingRun } from '../bonding/bonding-of.ts';
import type { Tie } from '../bonding/tie.ts';
import type { Guy, Support } from '../site/site.ts';

/** A tie of a guy as a strike finds it. */
export interface StrikeGuy {
  readonly tie: Tie;
  /** Node on the support instead of that of nobody's height: its top. */
  readonly top: string | null;
}

/**
 * Ties of guys in a strike: known metal, known to have no insulators, from the top of its support (where nobody types where it
 * holds) down to its turnbuckle, in the guy's own name. open: the field that decides; null: it carries nothing.
 */
export function strikeGuys({ graph, site }: Pick<BondingRun, 'graph' | 'site'>) {
  const guys = new Map<string, { readonly guy: Guy; readonly support: Support }>();
  for (const support of site.supports) for (const guy of support.guys) guys.set(guy.id, { guy, support });
  return (key: string, tie: Tie): StrikeGuy | { readonly open: string | null } => {
    const ends = graph.extremities(key);
    const node = ends.find((end) => graph.getNodeAttribute(end, 'kind') === 'guy');
    const found = guys.get(node?.split('@')[0] ?? '');
    if (found === undefined || tie.is === 'unknown') return { open: tie.decidedBy };
    const { guy, support } = found;
    const path = `supports.${support.id}.guys.${guy.id}.insulators`;
    // with insulators somewhere in it, its lower part is another's
    if (guy.insulators !== 'no') return { open: guy.insulators === 'unknown' ? path : null };
    if (!leadsOn(graph, guy)) return { open: null };
    const isWire = ends.includes(support.id);
    const top = `${support.id}@top`;
    return {
      tie: { ...tie, part: guy.id, body: isWire ? 'span' : 'contact' },
      top: isWire && graph.hasNode(top) ? top : null,
    };
  };
}

/** A wire lands on its lower end; of an anchor alone nobody knows what it has to the soil. */
function leadsOn(graph: BondingRun['graph'], { id }: Guy): boolean {
  return [`${id}@tower`, `${id}@anchor`].some(
    (node) => graph.hasNode(node) && graph.someEdge(node, (_key, { kind }) => kind !== 'guy'),
  );
}
