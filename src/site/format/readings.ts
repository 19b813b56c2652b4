import { pair } from './arresters.ts';
import { list, listOfKnown } from './collections.ts';
import { anyText, thingSections } from './common-fields.ts';
import { field } from './field.ts';
import { jointOrPoint, point } from './points.ts';
import { placed } from './positions.ts';
import { bareDistance, quantity, reading, statedOhm } from './quantity.ts';
import { date, text } from './words.ts';

const far = quantity('length', { positive: true });

export const readingKinds: Readonly<Record<string, string>> = {
  'four-pin': 'Soil by four pins in a line.',
  'fall of potential': 'An electrode or group by current and potential probes.',
  stakeless: 'A loop by a clamp meter.',
  continuity: 'Metal from one point to another.',
  joint: 'One joint.',
  potential: 'Voltage between two points.',
};

export const readingFields = {
  date: field(date, 'When it was read.'),
  weather: field(anyText, 'Weather, and how wet the ground was.'),
  instrument: field(anyText, 'What it was read with.'),
  by: field(anyText, 'Who read it.'),
  note: field(anyText, 'Anything worth knowing.'),
  photo: field(listOfKnown(anyText), 'File names of photographs.'),
  at: field(placed, 'Middle of the row of pins.', ['four-pin']),
  spacing: field(list(bareDistance), 'Distance from pin to pin, one for each reading.', ['four-pin']),
  pins: field(list(list(far)), 'Places of the four pins along their line, where the spacing is not even.', [
    'four-pin',
  ]),
  resistance: field(list(statedOhm), 'What was read, one for each spacing or probe.', [
    'four-pin',
    'fall of potential',
  ]),
  electrode: field(point(['electrodes', 'bars', 'equipment', 'supports']), 'The electrode or group that was read.', [
    'fall of potential',
  ]),
  current_probe: field(far, 'Distance of the current probe.', ['fall of potential']),
  potential_probe: field(list(far), 'Distances of the potential probe.', ['fall of potential']),
  driven: field(far, 'How deep the rod was driven when it was read, if that was not its whole length.', [
    'fall of potential',
  ]),
  drops_at: field(far, 'Depth at which the reading was seen to drop while the rod was driven.', ['fall of potential']),
  direction: field(text(), 'Which way the probes went.', ['four-pin', 'fall of potential']),
  on: field(jointOrPoint([...thingSections, 'guys']), 'What the clamp meter was round.', ['stakeless']),
  between: field(pair, 'The two points.', ['continuity', 'potential']),
  joint: field(jointOrPoint(thingSections), 'The joint.', ['joint']),
  reads: field(reading, 'What the instrument showed.', ['stakeless', 'continuity', 'joint', 'potential']),
  current: field(quantity('current', { positive: true }), 'The test current.', ['continuity', 'joint']),
  frequency: field(quantity('frequency', { positive: true }), 'Frequency of the test.', ['potential']),
};
