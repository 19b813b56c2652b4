/** Key of a default → what taking it means. */
export const defaultWords: Readonly<Record<string, string>> = {
  'default-known': 'What the file does not mark as seen or measured counts as told by somebody.',
  'default-top': 'Its upper end is taken at the surface; deeper, it works a little better and freezes less.',
  'default-bare': 'Taken as bare; insulation keeps a buried wire from working as an electrode.',
  'default-units': 'Figures are printed in this unit first; nothing is worked out from it.',
  'default-count': 'Taken as one, because how many there are is not known.',
};
