/** Key of a question → what is asked about something that was accepted as typed. */
export const questionWords: Readonly<Record<string, string>> = {
  'kind-near': '`{kind}` is taken as a kind of its own; did you mean `{near}`?',
  'point-above-top': '`@{place}` is above the height typed for `{id}`; is one of the two a slip?',
  'point-beyond-end': '`@{place}` is beyond the length typed for `{id}`; is one of the two a slip?',
  'height-in-inches': 'A height of {text} is {feet} ft; were feet meant?',
  'gauge-as-mm2': '`{text}` is a section in square millimetres; was the gauge {gauge} AWG meant?',
  'rod-over-100-ft': 'A rod of {text} is far longer than rods are; was another unit meant?',
  'electrode-above-ground':
    'With its top at {top} and a length of {length} all of it stands above the ground; `top` is the depth of its upper end, down is plus. Is one of the two a slip?',
  'shorter-than-thick': 'A length of {length} is less than its own thickness of {diameter}; are the two exchanged?',
  'resistivity-odd':
    'Nothing underfoot has such a resistivity: sea water has 0.2 ohm m, dry rock some 100 000; was another unit meant?',
  'length-below-straight':
    'The length of {text} is less than the straight distance between its ends, {straight}; the typed length was used. Is one of the two a slip?',
  'two-bare-on-one-line':
    '`{other}` lies on the same line, and neither is insulated; do they touch? Type `along: {part: {other}, spacing: ...}` if they are apart.',
  'crossing-untied':
    '`{other}` lies bare in the soil and meets this at the same depth, and nothing ties the two; do they touch? Type the conductor or the joint that ties them if they do; if not, the depths that keep them apart.',
  'state-changes-nothing':
    'This state opens, sets and loses nothing, so it gives the same result as the site as typed; what is different in it?',
  'lengths-and-length': 'The lengths add up to {sum}, the whole was typed as {text}; which is right?',
};
