/** Works that bring something: `site work` → why it stands among the candidates all the same. A plan leaves them out. */
export const harmful: Readonly<Record<string, string>> = {};

/** Works that leave something they are proposed for, tried alone: `site work` → why. */
export const falling: Readonly<Record<string, string>> = {
  'marl-hill second-path:c1':
    'The clamp holds both the wire to the panel and the wire to the tower: once the tower has its second way, the roof mast still hangs on the clamp, and the finding stands with one part less.',
};

/** Hazards and defects without a work: `site finding` → why only a person can put it right, or say what to do. */
export const withoutWork: Readonly<Record<string, string>> = {
  'marl-hill resistance-has-provenance:r2': 'Whoever measured has to say with what; nothing on the site changes.',
  'repeater-hut resistance-has-provenance:drilled-reading': 'Whoever measured has to say with what.',
  'repeater-hut resistance-has-provenance:rod-reading': 'Whoever measured has to say with what.',
  'tower-standard dead-end-length:down-east':
    'Another way down for a lightning protection that is claimed is drawn by who designs it, not found by a search.',
  'tower-standard down-conductor-count:down-east': 'As above: one more way down, one work for both.',
  'case-55 own/own-bar-to-master-bar:bar-lead': 'The limit is the owner’s own, and only the owner knows what meets it.',
};
