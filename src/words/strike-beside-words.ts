/**
 * What a strike means for what stands beside its ways or was chosen for them, on the page and in the terminal. `[idea]` is a
 * term of the region, `{name}` a value (see say.ts).
 */
export const strikeBesideWords = {
  unknown: 'unknown',
  more: '... and {count} more; --json has them all.',
  sideFlash: {
    heading: 'Side flash to metal beside the way down',
    caption: 'Metal beside a way down that is not tied straight to it',
    head: {
      metal: 'Metal',
      distance: 'Distance there is',
      nfpa: 'NFPA 780 asks',
      iec: 'IEC 62305-3 asks',
      outcome: 'Outcome',
    },
    line: '{metal} beside {way}{through}: {distance} apart; NFPA 780 asks {nfpa}, IEC 62305-3 {iec}: {outcome}.',
    beside: 'beside {way}',
    taken: 'height not known, the worst taken',
    through: 'through a wall',
    measure:
      'Measure how far {list} {list?is:are} from the nearest support, lead or cable that carries a strike down: nobody typed it, so side flash cannot be told.',
    enough: '{count} {count?other pair is:other pairs are} far enough apart by the method of this region.',
    note: 'Closer than that, bond the two together or move one. NFPA 780: height over six times the number of leads near by, half of it through solid matter (as on study cards); IEC 62305-3: by the level of protection, over all levels where none is claimed, twice as much through solid matter (as in a trade guide). Both are rules of thumb: the local authority decides which holds. Metal in the soil is not looked at.',
    outcomes: { met: 'far enough', 'not met': 'too close', 'cannot tell': 'cannot tell' },
  },
  force: {
    heading: 'Force',
    parallelPull: '{part} and {beside}, {apart} apart: pulled together with {force} on each metre.',
    parallelPush: '{part} and {beside}, {apart} apart: pushed apart with {force} on each metre.',
    bend: '{part}, at a bend of {turnsDeg}: {force} that would straighten it.',
    newton: '{newton} N ({pound} lbf)',
    taken: '{apart} (taken: two cable diameters)',
    none: 'In this stroke no force reaches {least} (on each metre of a run). With the same shares of the greatest stroke of level I the strongest would be: {strongest}',
    note: 'Told from {least} on (on each metre of a run), a limit of our own: less moves nothing that usual clips hold. At the peak of each current, as if all came at once; it lasts some ten microseconds.',
  },
  margin: {
    heading: 'Protectors and the radio’s own voltage',
    caption: 'Peak RF voltage against the level of each protector',
    head: {
      arrester: 'Protector',
      power: 'Power, impedance, SWR',
      peak: 'Peak voltage',
      fires: 'Fires from',
      times: 'Margin',
    },
    line: '{arrester} on {line} ({load}): peak {peak}, fires from {fires}{times}: {outcome}.',
    load: '{power}, {impedanceOhm}, SWR {swr}',
    swrUnknown: 'unknown',
    times: '{times} times',
    receives: 'On lines that only receive: {list}.',
    note: 'The lowest voltage at which it fires should be 1.5 times the peak that the radio makes at the worst place of the line: sqrt(2 x power x impedance x SWR). A selection note of the trade (read). A tube of one typed voltage is taken to fire from 20 % below it. Several carriers on one line add their peaks.',
    outcomes: { met: 'fits', 'not met': 'too low', 'cannot tell': 'cannot tell', 'not applicable': 'only receives' },
  },
  earth: {
    heading: '[Electrode]s in a front',
    sentence:
      'With a front of {frontS}, soil of {resistivityOhmM} uses {effectiveM} of a wire or rod from where the current enters it while the soil holds, {ionisedM} where it breaks down. Two definitions, both from memory; they are not to be mixed.',
    caption: '[Electrode]s of which not all counts in this front',
    head: {
      part: '[Electrode]',
      arm: 'Farthest from where current enters',
      use: 'Of use, soil holding',
      broken: 'Of use, soil broken down',
      impulse: 'In this front',
    },
    line: '{part}: {arm} from where current enters; of use {use} while the soil holds, {broken} where it breaks down; {alone} alone, {impulse} in this front.',
    ionised: 'About these the soil breaks down at its peak current, and less of their resistance is left: {list}.',
    ionisedOne: '{part} (from {ohm} to {ionisedOhm}, from {onsetA} on)',
    notIonised: 'At {fieldVPerM} the soil breaks down about none of them enough to tell.',
    direct: 'direct current: {ohm}',
    whole: 'all',
    allCount: 'Of all others that take 1 % of the stroke and more the whole length counts.',
    everyCount: 'Of every rod and wire that takes 1 % of the stroke and more the whole length counts.',
    note: 'In this front: peak voltage over peak current of it alone, while the soil holds (conventional impedance, L. Grcev, 2009, coefficients from memory). What is longer than counts in a front still lowers the slow tail.',
  },
} as const;
