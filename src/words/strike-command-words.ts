/** What the command `strike` says. `[idea]` is a term of the region, `{name}` a value (see say.ts). */
export const strikeCommandWords = {
  title: '{site}: a strike at {at}',
  titleLine: '{site}: a surge along {at}',
  titleNearby: '{site}: a strike into the ground {at} of the middle',
  unnamed: 'Unnamed site',
  inState: ', state {state}',
  headings: {
    put: 'WHAT WAS PUT IN',
    asked: 'WHAT WAS ASKED FOR',
    worst: 'WORST DIFFERENCES',
    outside: 'OUTSIDE LINES AGAINST THE LOCAL CASE',
    currents: 'WHERE THE CURRENT GOES',
    joints: 'JOINTS',
    cores: 'CORES',
    fired: 'FIRED',
    failures: 'IF ONE THING FAILS',
    assumed: 'ASSUMED, OR LEFT OUT',
    exact: 'HOW EXACT',
  },
  put: {
    stroke: '{name}: {peak}, {wave} µs, steepest {steepest}, charge {charge}, {action} of heat in each ohm.',
    source: '[from {document}{edition}{check}]',
    edition: ', {edition}',
    check: {
      read: '',
      'second-hand': '; as quoted elsewhere, check against your copy',
      memory: '; from memory, check against your copy',
      ours: '; our own figure',
    },
    rise: 'Against [remote ground]: {list}. How high depends on where [remote ground] is taken to be; differences of things close together do not.',
    riseOf: '{part} {volt}',
  },
  differences: {
    head: { kilovolt: 'kV', range: 'range, kV', perKiloampere: 'V per kA', perSteepness: 'V per kA/µs' },
    pair: '{a} to {b}',
    line: ' (by {by})',
    comesIn: '{by} at {a}',
    reach: ' (in reach)',
    remote: '[remote ground]',
    none: 'No two things that a line joins, that are in one reach or that hang on the [service] stand apart.',
    more: '... and {count} smaller ones; --json has them all.',
    notAsked: 'Of {a} to {b} nothing can be said here; see what was left out.',
    outside:
      'A line from outside stays near [remote ground] until its protector fires, while the station rises: this is what stands across that protector, or across the box where there is none. How high it is depends on where [remote ground] is taken to be.',
    upper: '^ Places are not known, so this is worked out from lengths alone and is an upper estimate.',
    beyond:
      '* Longer ways than this front allows (the longest {longest}, the most {most}): travelling waves are not counted, and the figure can be low by up to 30 %.',
    chain:
      '+ Longer ways than this front allows, worked out with travel time: long metal in the air as sections in which waves run.',
    beyondUnknown:
      '* Longer ways than this front allows: travelling waves are not counted, and the figure can be low by up to 30 %.',
    bracketed:
      '~ The range also holds the wires of which only the length is known coupled closely to each other (k = 0.6); the figure has them uncoupled.',
    ranges: 'Ranges run from the soil at its least resistivity to its greatest.',
    route: 'A difference is what a cable laid straight between the two would see.',
  },
  currents: {
    head: { kiloampere: 'kA', share: 'share', rise: 'warmer by', melts: 'melts' },
    metal: 'Through metal, the most on any span:',
    soil: 'Into the soil:',
    label: '{id} ({what})',
    unknown: 'unknown',
    no: 'no',
    left: '-',
    leftNote: '- Metal or section is not known.',
    atMost: '{rise} ^',
    takenNote:
      '^ At most: nobody typed the section, so thin metal was taken: a leg of 3/4 in (19 mm) tube, a mast of 1 1/4 in (32 mm) tube, both with walls of 0.05 in (1.2 mm), all legs together; for a hard line the braid of RG-58.',
    yes: 'YES',
    levels: 'at {list}',
    notMuch: 'Less than {share} each: {list}.',
    notMuchMore: 'Less than {share} each: {count} more; --json has them.',
    more: '... and {count} smaller ones; --json has them all.',
    none: 'No metal carries current.',
    sum: 'Peaks come at different moments, so shares need not add up to the whole.',
    levelNote:
      '"At I" and so on: melts if its share were of the first positive stroke (10/350) of that protection level, which is many times hotter than this one.',
    meltsNote: 'What melts lets go in the strike itself, and the figures above no longer hold.',
    cords:
      'Lines that carry current, the shield of a cable or the cord of a box: {list}. What their boxes see comes from it.',
  },
  joints: {
    head: { kiloampere: 'kA', volt: 'volts across', energy: 'heat in it' },
    unknown: 'unknown',
    more: '... and {count} with less; --json has them all.',
    likely:
      'At the likely resistance of each kind where nobody read one; loose or corroded, a joint gets many times this.',
  },
  cores: {
    head: { kilovolt: 'kV' },
    label: '{line} at {at}',
    intro: 'Core against shield, what the current in the shield brings over:',
    more: '... and {count} smaller ones; --json has them all.',
  },
  fired: {
    one: '{arrester} reaches its level after {after}.',
    on: '{arrester} on {line} reaches its level, {level}, after {after}, and carries up to {peak}.',
    passes:
      '{arrester} on {line} reaches its level, {level}, after {after}, and carries up to {peak}. At {at} the wire stands {before} over the case until then and {later} afterwards; if nothing conducted, {open}.',
    may: 'At the low end of what tubes of their kind do, these would too: {list}.',
    none: 'None of {list} in this calculation; what was taken of protectors stands below.',
    others: 'Not reached: {list}.',
    note: 'Differences, currents and heat above are those without what conducts here, which is also what a protector that fails leaves; --json has them with it.',
  },
  failures: {
    head: { lost: 'Without: what then grows most', before: 'kV before', after: 'kV after' },
    row: '{lost}: {a} to {b}',
    fires: 'Without {lost} also {list} conducts; volts of that row are with what conducts.',
    rests: 'Without {lost} {list} no longer conducts; volts of that row are with what conducts.',
    rowInSeries: '{lost} (or {count} in series with it): {a} to {b}',
    separates:
      'Without {lost} no metal leads from {list} to the soil: it would flash over to something, and no figure can be named.',
    lessOne: 'One other raises no difference by {share} or more.',
    less: 'Of {count} others none raises a difference by {share} or more.',
    more: '... and {count} that matter less; --json has them all.',
  },
  exact: {
    solve:
      '{branches} branches and {loops} loops in {steps} steps. Error of the steps: {error}. Energy put in and energy accounted for differ by {energy}. What was typed is less exact than that.',
    quasi:
      'Quasi-static: no travelling waves, no leader from the ground, no corona. Such figures hold within 6 % while no way is longer than {most} for this front; the longest here is {longest}.',
    quasiShort: 'Quasi-static: no travelling waves, no leader from the ground, no corona.',
    moreAssumed: '... and {count} more; --json has them all.',
  },
  caution:
    'Worked out from what somebody typed; no inspection, no measurement, and no promise that damage cannot happen. A strike can be larger than this one and jump where no metal leads. A few hundred volts can kill. Stay away from masts, cables, radios and [electrode]s when a storm is near, and do no work on them. Local code, the [authority] and a [electrician] decide.',
  verdict: {
    worst: 'Worst: {a} to {b}, {volt}.',
    melts: 'Melts: {list}.',
    meltsUnknown: 'Not known whether it melts: {list}.',
    meltsUnknownOf: 'Not known of {count} conductors whether they melt.',
  },
  next: {
    without: 'Next: evenground without {file} {lost}',
    check: 'Next: evenground check {file}',
  },
  refused: 'A strike at {at} cannot be worked out: {why}',
  refusedAnywhere: 'A strike cannot be worked out: {why}',
} as const;

/** What is wrong with what was asked of the command `strike`, and what to type. */
export const strikeOptionWords = {
  current: {
    'unit-missing': '--current: `{text}` has no unit. Type it behind the figure: --current "30 kA".',
    'unit-unknown': '--current: `{unit}` in `{text}` is no unit of a current. Type A or kA: --current "30 kA".',
    'unit-of-other-kind': '--current: `{text}` is for {kind}, not for a current. Type A or kA: --current "30 kA".',
    'unit-ambiguous': '--current: `{unit}` in `{text}` can mean two things. Type A or kA: --current "30 kA".',
    'not-a-number': '--current: `{text}` cannot be read as a current. Type a figure with its unit: --current "30 kA".',
    'zero-or-negative':
      '--current: `{text}` is no strike; it has to be more than zero. Type the size of the peak: --current "30 kA".',
    'range-reversed':
      '--current: `{text}` goes from more to less, and one strike has one peak. Type one figure: --current "30 kA".',
    'decimal-comma': '--current: `{text}` holds a comma. Type a point before the decimals: --current "{corrected}".',
    'over-range-not-here':
      '--current: `{text}` is what an instrument shows. Type a figure with its unit: --current "30 kA".',
    range: '--current: `{text}` is a range, and one strike has one peak. Ask twice, once for each end.',
    size: '--current: `{text}` is no stroke that was ever recorded. Peaks are taken from {leastA} to {mostA}; most first strokes have 10 to 100 kA.',
  },
  wave: {
    unknown: '--wave: `{text}` is no wave that is known here{near} Waves: {list}.',
    near: '; did you mean {near}?',
    each: {
      '10/350': '10/350 (first positive stroke)',
      '1/200': '1/200 (first negative stroke)',
      '0.25/100': '0.25/100 (a later stroke of a flash)',
      '8/20': '8/20 (current of test generators)',
      '1.2/50': '1.2/50 (voltage of test generators, here as a current)',
    },
  },
  nearby: {
    shape:
      '--nearby: `{text}` is no distance. Type one with its unit, and the side if you know it: --nearby "100 m" or --nearby "100 m north-east".',
    range: '--nearby: `{text}` is a range. Ask twice, once for each end.',
    both: '--at and --nearby: a strike enters the site or stands beside it. Type one of the two.',
  },
  ionisation: {
    shape:
      '--ionisation: `{text}` is no field strength. Documents have {leastVPerM} to {mostVPerM}: --ionisation "300 kV/m".',
    size: '--ionisation: `{text}` is no field at which soil breaks down. Documents have {leastVPerM} to {mostVPerM}.',
  },
  between: {
    shape: '--between: `{text}` is not a pair. Type two names with a comma between them: --between radio,main-panel.',
    same: '--between: `{text}` names one thing twice, and nothing stands between it and itself.',
  },
} as const;
