/** Reasons of rules that find a part of the site apart, where that part stands on a supply of its own. */
export const ownSupplySentences = {
  'supply of its own':
    'No permanent metal joins {at} to the [service]: {panel} stands on a TT supply of its own, without a [protective conductor] from the [service]. Whether that is in order hangs on what joins the two or can be touched with both.',
  'look between the two':
    'Have a [electrician] say whether the TT part at {panel} is in order: own [electrode] and residual-current device, nothing of both sides within reach of one person, no cable, screen, pipe or fence from one to the other. Join the two only if that fails.',
};
