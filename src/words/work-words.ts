/** A step of a work; one with `when` is told only where that value is known, or one of those. */
export type WorkStep = string | { readonly when: string | readonly string[]; readonly says: string };

/** What a work is called, what it is good for, and what is done, in order. `{name}` is a value of the work. */
export interface WorkWords {
  readonly title: string;
  readonly why: string;
  readonly steps: readonly WorkStep[];
}

const locate = 'Have buried pipes and cables located and marked before anybody digs or drives.';
/** Where it is not sure that anybody digs: what is laid in soil, and what may be where it comes down a wall. */
const locateIfDug: WorkStep = { when: ['depthM', 'down'], says: locate };
const noLength: WorkStep = 'Measure the way before buying: the length is {lengthM}.';
const sweep = 'No bend tighter than a radius of {=8 in}; down or level all the way, never up again.';
const look = 'Leave the joints open until somebody else has looked at them and taken a photograph.';
const inSoil: WorkStep = {
  when: 'depthM',
  says: 'Dig {depthM} deep, lay it bare, and close the trench after the look.',
};
const down: WorkStep = {
  when: 'down',
  says: 'Bring it down the outside of the wall, held to it. From the foot of the wall to a [rod] it may lie in the soil.',
};
const shields: WorkStep = {
  when: 'shield',
  says: 'The shield of the line is bonded by the protector; it is no bond for anything else.',
};

const eaten = 'Copper in the soil beside galvanised steel eats the steel, and the mast hangs on it.';
const lookAtShaft = 'Look at the galvanised steel a spade deep: if it is thin already, nobody climbs the mast.';

const unplugged =
  'Nothing is plugged in at the station, the transmitter is off, and no storm is near. Where the way from the [service] to its [electrode] leads over {panel}, that is for a [electrician], with the supply off.';
const mountAnew =
  'Mount {panel} on the outer wall beside {beside}, low, and out of the drip of the roof. Arresters stay bolted to it.';
const movedAlong: readonly WorkStep[] = [
  { when: 'depthM', says: locate },
  {
    when: 'wires',
    says: 'Lead the other wires of the panel to its new place, each in one piece: {wires}. Their lengths are reckoned; measure before buying.',
  },
  {
    when: 'lines',
    says: 'Bring {lines} in at the new place. A cable that is too short is a new one, or gets a piece joined on by connectors that are sealed; close the old hole.',
  },
  'Before a hole is drilled look for pipes and wires in the wall, and for what burns easily beside the new place.',
  look,
];

/** Sentences of each kind of work, by the key `words` of its values: the kind itself, or one way of putting right. */
export const workWords = {
  bond: {
    title: 'Bond {from} to {to}',
    why: 'Two systems of [electrode]s that only soil joins are driven apart by a strike or a fault, and what is plugged into both is between them.',
    steps: [
      locateIfDug,
      'Lay {wire} from {from} to {to}, round the house and not through it.',
      down,
      noLength,
      inSoil,
      sweep,
      'Weld to rods and buried wire; in reach, a clamp that is [listed] for the metal and for soil.',
      look,
    ],
  },
  'tie-metalwork': {
    title: 'Tie {from} to {to}',
    why: 'Metal that nothing ties takes on whatever comes, and passes it to whoever touches it and something else.',
    steps: [
      locateIfDug,
      'Clean the metal bright where the clamp goes.',
      'Lay {wire} from {from} to {to}, short and straight.',
      down,
      noLength,
      inSoil,
      'A pipe gets a pipe clamp that is [listed], a case a bolted lug on bare metal, never a screw that holds the cover.',
      look,
    ],
  },
  'second-path': {
    title: 'A second way from {from} to {to}',
    why: 'One clamp or one wire holds {part} alone: when it fails nothing tells, and the next strike finds its own way.',
    steps: [
      locateIfDug,
      'Lay {wire} from {from} to {to}, on clamps of its own and apart from what is there.',
      down,
      noLength,
      inSoil,
      sweep,
      look,
    ],
  },
  'leg-leads': {
    title: 'A lead from each leg of {support}',
    why: 'A strike comes down all legs; a leg without a lead drives it through the bolts of the others.',
    steps: [
      locate,
      'Lay {wire} from the foot of leg {legs}, each to the nearest [electrode] of the mast.',
      down,
      'Weld to the flange or plate at the foot, never to the tube of a leg.',
      sweep,
      look,
    ],
  },
  'close-ring': {
    title: 'Close the ring {ring}',
    why: 'Only a ring that is closed keeps everything on it at one potential, and keeps doing so when it is cut once.',
    steps: [
      locate,
      { when: 'wire', says: 'Lay the piece that is missing, of {wire}.' },
      { when: 'lengthM', says: 'It is {lengthM} long.' },
      'Weld both ends.',
      look,
    ],
  },
  'add-rods': {
    title: '{count} more [rod]{count?:s} at {to}',
    why: 'A lone [rod] hangs on one patch of soil; one more, far enough off, nearly halves what it has.',
    steps: [
      locate,
      'Drive {count} [rod]{count?:s} of {rodLengthM}, {count?:each }{spacingM} from the next [electrode], upright, the top below the surface.',
      'Where rock stops a [rod] drive it aslant, at most 45°, or lay it in a trench; ask before doing so.',
      'Tie it by the wire below, welded.',
      down,
      'Measure it alone before it is tied, and write the reading down with the date and the weather.',
      look,
    ],
  },
  'guy-rod': {
    title: 'A [rod] at the anchor of {guy}',
    why: 'A strike comes down the [guy]s too, and jumps from the anchor through whatever holds it.',
    steps: [
      locate,
      'Drive a [rod] of galvanised steel of {rodLengthM} beside the anchor, {spacingM} off: copper would eat the anchor.',
      'Tie it to the [guy] above the turnbuckle with a clamp of stainless steel, the wire tinned.',
      'Tie it to {to} in the ground.',
      look,
    ],
  },
  'deepen-rod': {
    title: 'Drive {rod} to {lengthM}',
    why: 'A [rod] that is too short stands in soil that dries and freezes.',
    steps: [
      locate,
      'Take the wire off only while nothing is plugged in and no storm is near.',
      'Couple another length on, or drive a new [rod] of {lengthM} in the place of this one.',
      'Make the joint anew, and measure before and after.',
    ],
  },
  'replace-joint': {
    title: 'New joint{count?:s} at {joints}',
    why: 'The joint that is there melts, works loose or corrodes: the whole way hangs on it.',
    steps: [
      'Unplug everything at the station first; nobody opens such a joint with a storm near.',
      'Never open the only bond of a live service: that is for the [electrician].',
      'Cut back to bright metal, clean both sides, and make: {kinds}.',
      {
        when: 'aluminium',
        says: 'Take only a fitting that is marked for aluminium and copper. Brush aluminium bright and coat it with joint paste at once.',
      },
      'A weld on the steel of a mast goes on its flange or plate, never on the tube.',
      'Measure across the new joint; more than a thousandth of an ohm is made again.',
      look,
    ],
  },
  'replace-conductor': {
    title: 'New conductor for {conductor}',
    why: 'What is there is thinner than asked, worn, or leads a strike through the house.',
    steps: [
      'Lay the new conductor of {wire} from {from} to {to} before the old one comes off.',
      'Outside the house, down or level all the way.',
      noLength,
      sweep,
      'Take the old one out, so that nobody takes it for a bond.',
    ],
  },
  'add-protector': {
    title: 'A {kind} for {line} on {panel}',
    why: 'What comes in along {line} is stopped outside, where its way to [ground] is short.',
    steps: [
      'Mount {count} {kind} on {panel}, metal to metal, outside.',
      'Lead {line} to {panel} and through it; nothing goes round it.',
      shields,
      'Keep the side of the line and the side of the house apart: they must not run beside one another.',
      'One that is [listed], for all wires of the line.',
    ],
  },
  'mains-protector': {
    title: 'A [surge protector] of the mains at {panel}',
    why: 'Mains is the other end of most damage: what rises at the antenna goes out there.',
    steps: [
      'An [electrician] mounts it in or beside {panel}, its leads a hand’s breadth long.',
      'One that is [listed] for the supply that is there.',
    ],
  },
  'outlet-protector': {
    title: 'A [surge protector] for {line} on {panel}',
    why: 'Mains and antenna of one box have to meet at one bar, else the box is between them.',
    steps: [
      'Mount it on {panel} and plug the box into it, not into the wall.',
      'An [electrician] does what is fixed wiring.',
    ],
  },
  'move-arrester': {
    title: 'Move {arrester} onto {panel}',
    why: 'An arrester that hangs on a wire, or stands in the room, brings in what it is there to keep out.',
    steps: [
      'Bolt {arrester} to {panel}, metal to metal, without a lead.',
      { when: 'lines', says: 'Bring {lines} to it there.' },
      shields,
    ],
  },
  'new-panel': {
    title: 'A new [entry panel], {panel}, bonded to {to}',
    why: 'All lines come in at one place beside the [service], so that nothing rises against anything else.',
    steps: [
      'Mount a plate of copper or brass on the wall outside, as near to where the [service] comes in as can be, low, and out of the drip of the roof.',
      'Bond it to {to} by {wire}, short and straight.',
      noLength,
      'Drill it for the lines that come now and for those to come.',
    ],
  },
  'new-panel-away': {
    title: 'A new [entry panel], {panel}, bonded to {to}',
    why: 'All lines into {building} come in at one place beside what they are [grounded] by, so that nothing rises against anything else.',
    steps: [
      'Mount a plate of copper or brass on the wall outside of {building}, where the lines arrive, low, and out of the drip of the roof.',
      'Bond it to {to} by {wire}, round the building and not through it.',
      noLength,
      'Drill it for the lines that come now and for those to come.',
    ],
  },
  'move-panel': {
    title: 'Move {panel} along the wall, beside {beside}',
    why: 'Each metre between the panel and what lies in the soil lifts it in a strike, with every box that hangs on it.',
    steps: [
      unplugged,
      mountAnew,
      {
        when: 'wire',
        says: 'Tie it to {to} by {wire}, {lengthM} at most, down and straight, before anything else is joined.',
      },
      ...movedAlong,
    ],
  },
  'panels-together': {
    title: 'Move {panel} beside {beside} and join the two',
    why: 'Two panels that are apart do not rise alike in a strike, and what is plugged into lines of both is between them.',
    steps: [
      unplugged,
      mountAnew,
      {
        when: 'wire',
        says: 'Join it to {to} by {wire} or a wide strap, {lengthM} at most, before anything else is joined.',
      },
      ...movedAlong,
    ],
  },
  'panel-not-moved': {
    title: 'Move {panel}',
    why: 'It hangs too far from what lies in the soil, or from where other lines come in.',
    steps: ['Whoever knows the site says what stands near the new place.'],
  },
  'move-line': {
    title: 'Lead {line} down {support} and in at the panel',
    why: 'A line that leaves its mast high up, or is bonded nowhere, carries its share of a strike into the house.',
    steps: [
      'Nobody climbs who is not trained for it, nor with a storm near.',
      'Lead {line} down the mast to its foot before it turns to the house.',
      {
        when: 'bonds',
        says: 'Bond its shield to the mast with {bonds} grounding kit{bonds?:s}, below the antenna and at the foot; seal them.',
      },
      { when: 'panel', says: 'Bring it in through a protector on {panel}.' },
    ],
  },
  neutral: {
    title: 'Take out the second bond of the [neutral] at {part}',
    why: 'A [neutral] that is bonded twice shares its current with every bond and case between the two.',
    steps: [
      'Make sure first that the feeder has a [protective conductor].',
      'Only an [electrician] opens {part}.',
      'The bonding screw or strap comes out; [protective conductor]s and the [neutral] go on bars of their own.',
    ],
  },
  'feeder-conductor': {
    title: 'A [protective conductor] with the feeder {part}',
    why: 'A fault at {to} has no way back but soil and the [neutral]: nothing switches off, and every case there is live.',
    steps: [
      'Only an [electrician] does this, with the supply of {from} and {to} off.',
      {
        when: 'unsure',
        says: 'Open both ends and look first: if a [protective conductor] is there, only the file has to say so.',
      },
      'Lay it with the other conductors of {part}, in one cable, pipe or trench, from {from} to {to}; the [electrician] says its size.',
      'Where there is no room for it the whole feeder is laid anew.',
      noLength,
      'Land it on the bar for [protective conductor]s at both ends, never on that of the [neutral].',
      'Measure it from end to end before the supply comes on.',
    ],
  },
  'pulled-lines': {
    title: 'A [grounded] place for {lines} when {count?it is:they are} pulled',
    why: 'A plug on the floor is the end of a wire from the mast: what comes down jumps from it.',
    steps: [
      {
        when: 'panels',
        says: 'Mount a row of [grounded] receptacles outside beside {panels}, one for each line, each bolted metal to metal to it.',
      },
      'A receptacle is worth what it is bolted to: bare metal of the [entry panel] that is tied to the system of the service.',
      'In a storm the plug comes off outside and goes on its receptacle; pull before the storm is near, or not at all.',
    ],
  },
  bend: {
    title: 'Lay the bend{count?:s} of {part} wider',
    why: 'A strike leaves a wire where it turns sharply.',
    steps: [
      'Lay {part} in a sweep with a radius of {radius} or more.',
      {
        when: 'which',
        says: 'Counted from {from} it is bend{count?:s} {which}; the other{others?:s} stay{others?s:} as {others?it is:they are}.',
      },
      'Where it is too short for that, replace it.',
    ],
  },
  'electrode-condition': {
    title: 'Put {part} right',
    why: 'It was found {condition}: what it carries cannot be counted on.',
    steps: [
      locate,
      'Drive a new one beside it if it turns in the hand or is eaten.',
      'Make its joint anew and measure it.',
    ],
  },
  'rod-outside': {
    title: 'Drive {part} anew outside',
    why: 'An [electrode] inside the house leads a strike through it.',
    steps: [
      locate,
      'Drive the new one outside, off the wall, and lead its wire there by the outside.',
      'Take the old wire out.',
    ],
  },
  'anchor-rod': {
    title: 'Galvanised [rod]{count?:s} in place of {part}',
    why: eaten,
    steps: [
      locate,
      'Drive {count} [rod]{count?:s} of galvanised steel and tie {guy} to {count?it:them} before the copper comes off.',
      lookAtShaft,
    ],
  },
  'anchor-pipe': {
    title: 'A galvanised pipe in place of {part}',
    why: eaten,
    steps: [
      locate,
      'Drive {count} pipe{count?:s} of galvanised steel and tie {guy} to {count?it:them} before the copper comes off.',
      lookAtShaft,
    ],
  },
  'intersystem-bar': {
    title: 'An [intersystem bar] at the [service]',
    why: 'Telephone, cable and antenna need one place to be bonded at, outside the panel.',
    steps: ['Mount it outside beside the meter, four terminals, not on a cover.', 'Bond it to {to} by {wire}.'],
  },
  'arrester-size': {
    title: 'Another {kind} in place of {arrester}',
    why: 'One that fires on the power of the station wears out, and one that fires too late keeps nothing out.',
    steps: ['Take a {kind} that fires at {sparkoverV}, for the power and the line that are there.'],
  },
} as const satisfies Readonly<Record<string, WorkWords>>;

export type WorkWordsKey = keyof typeof workWords;
