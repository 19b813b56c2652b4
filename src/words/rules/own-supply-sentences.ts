/** Reasons of rules that find a part of the site apart, where that part stands on a supply of its own. */
export const ownSupplySentences = {
  'supply of its own':
    'No permanent metal joins {at} to the [service]: {panel} stands on a TT supply of its own, without a [protective conductor] from the [service]. Whether that is in order hangs on what joins the two or can be touched with both.',
  'look between the two':
    'Have a [electrician] say whether the TT part at {panel} is in order: own [electrode] and residual-current device, nothing of both sides within reach of one person, no cable, screen, pipe or fence from one to the other. Join the two only if that fails.',
  'which supply':
    'No permanent metal joins {at} to the [service], and {panel} beside {at?it:them} is a TT supply of its own. Nobody can tell which of the two supplies {at} {at?belongs:belong} to.',
  'say which':
    'Have a [electrician] say which supply {at} {at?belongs:belong} to. What is used with {panel} goes to the [electrode] or the bar of the TT part and to nothing of the other supply; the two [ground]s stay out of reach of one person. Join nothing before that; type the conductor once it is there.',
  'both in one building':
    '{panel} is a TT supply of its own, and in the same building {beside} {beside?hangs:hang} on the [ground] of the [service]. Whoever touches metal of both stands between two [ground]s. Whether one person reaches both is not known.',
  'part the two':
    'Have a [electrician] look now, and until then touch no metal of both at once. Either all metal of that building goes to the [electrode] of {panel} and what leads to the [service] comes out, or the TT part is given up. Where one person reaches both, type `within_reach:`.',
};
