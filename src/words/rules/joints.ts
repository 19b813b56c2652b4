import type { RuleWords } from '../rule-words.ts';

const look =
  'Look at {at} and type under `joints:` what kind of joint {at?it is:each is}, and what is stamped on it (`listed:`).';
/** The same where a cover has to come off that nobody else takes off. */
const lookInside =
  'Have a [electrician], with the cover of the panel off, look at {at}; type under `joints:` what kind of joint {at?it is:each is}, and what is stamped on it (`listed:`). Never take that cover off yourself.';
const tools = { 'look inside': 'electrician' } as const;

export const joints = {
  'no-solder-in-path': {
    title: 'No joint depends on solder',
    failTitle: 'Joint {at} is soldered',
    why: 'Tin-lead solder melts at 183 °C; the current of a strike heats a joint well past that, and the way is gone when it is needed.',
    met: 'Another method holds the joint; solder may only fill a joint that is bolted or crimped as well.',
    remedy: 'Replace {at} with an exothermic weld, an irreversible crimp or a [listed] clamp.',
    tools,
    because: {
      none: 'No joint is in the file.',
      solder: '{at} is soldered.',
      'kind unknown': 'The kind of {at} is not known.',
      look,
      'look inside': lookInside,
      other: '{at} is held by another method ({kind}).',
    },
  },
  'joint-method-allowed': {
    title: 'Joints on [electrode]s are exothermic, or [listed] clamps, lugs or connectors',
    failTitle: 'Joint {at} is made by a method that is not on the list',
    why: 'A joint in the weather that is not made for it corrodes and opens, unseen.',
    met: 'The method is one of those named.',
    remedy: 'Replace {at} with an exothermic weld or a clamp [listed] for the rod and the wire.',
    because: {
      none: 'No joint on an [electrode] is in the file.',
      'not a method': '{at} ({kind}) is not among the methods.',
      'a method': '{at} ({kind}) is among the methods.',
      'not listed': '{at} ({kind}) would do, but is not [listed].',
      'nobody said': 'The kind of {at}, or whether {at?it is:they are} [listed], is not known.',
      look,
    },
  },
  'clamp-listed-for-burial': {
    title: 'Clamps in the soil are [listed] for direct burial',
    failTitle: 'Clamp {at} lies in the soil and is not made for it',
    why: 'A clamp that is not made for soil corrodes away within years, where nobody sees it.',
    met: 'Listed for burial, in concrete for concrete; welds and irreversible crimps are left out.',
    remedy: 'Replace {at} with an exothermic weld or a clamp [listed] for direct burial.',
    because: {
      none: 'No clamp lies in the soil.',
      listed: '{at} is [listed] for burial.',
      'not for soil': '{at} lies in the soil and is not [listed] for it.',
      'nobody said': 'Whether {at} {at?lies:lie} in the soil, or {at?is:are} made for it, is not known.',
      look: 'Look at {at}. Above grade: type `buried: no` of the conductor, or the `top:` of the rod (0, or less where it stands out). Below grade: is “DB”, “direct burial” or the like stamped on {at?it:them}? Type `for_burial:`.',
      'perhaps buried':
        '{at} {at?is:are} not [listed] for burial, and whether {at?it lies:they lie} in the soil is not known.',
      'look down':
        'Look whether {at} {at?is:are} below grade; type `buried:` of the conductor (`no`, or how deep), or the `top:` of the rod.',
      'stamp unknown': '{at} {at?lies:lie} in the soil, and whether {at?it is:they are} made for it is not known.',
      'look at stamp':
        'Look at {at}: is “DB”, “direct burial” or the like stamped on {at?it:them}? Type `for_burial:`.',
      'kind unknown': '{at} {at?lies:lie} in the soil, and the kind of {at?it:each} is not known.',
      'look at kind': 'Look at {at} and type under `joints:` what kind of joint {at?it is:each is}.',
    },
  },
  'one-conductor-per-clamp': {
    title: 'A clamp holds one conductor unless it is made for more',
    failTitle: 'Clamp {at} holds more than one conductor',
    why: 'Two wires in one clamp hold each other loose, and both go when it opens.',
    met: 'One conductor, or a joint made for several; a clamp that is [listed] for more says so by `for_wires:`.',
    remedy: 'Give each wire at {at} a clamp of its own.',
    tools,
    because: {
      none: 'No clamp is in the file.',
      one: '{at} holds one conductor.',
      several: '{at} holds {holds}.',
      'made for several': '{at} holds {holds} and is of a kind made for that.',
      'listed for several': '{at} holds {holds} and is [listed] for so many.',
      'kind unknown': '{at} holds {holds}; its kind is not known.',
      look,
      'look inside': lookInside,
    },
  },
  'galvanic-pair': {
    title: 'Metals that meet outdoors lie near each other in the galvanic series',
    failTitle: 'The metals at {at} corrode each other when wet',
    why: 'Where two metals far apart in the series meet in the wet, the less noble one goes.',
    met: 'At most 0.15 V apart in the anodic index (outdoors); or a sheet of another metal, such as stainless steel or tinned copper, parts the two (`shim:`), or the joint is [listed] for both (`listed:`), and it is sealed against water (`sealed:`). A sheet alone does not do: it leaves a step of its own.',
    exempt: 'Joints on what is known to be indoors, where it is dry, and welds.',
    remedy:
      'Put a sheet of stainless steel or tinned copper between the two at {at}, or use a clamp [listed] for both, and seal it against water. Type `shim: stainless steel` or `listed: yes`, and `sealed: yes`; look at it each year.',
    because: {
      none: 'No joint of two known metals that may get wet is in the file.',
      sheet: '{at} has a sheet between its metals, and is sealed.',
      'made for both': '{at} is [listed] for both its metals, and sealed.',
      apart: 'The metals that meet at {at} are {first} and {second}: far apart in the series.',
      near: 'The metals that meet at {at} are {first} and {second}: near each other in the series.',
    },
  },
  'condition-sound': {
    title: 'What was found loose, corroded or open has been put right',
    failTitle: '{at} is not sound',
    why: 'A joint that is loose or corroded is the next one to open.',
    met: 'Found sound.',
    remedy: 'Repair {at}, look at it again, and record the date.',
    because: {
      none: 'No condition was recorded.',
      sound: '{at} was found sound.',
      loose: '{at} was found loose.',
      corroded: '{at} was found corroded.',
      open: '{at} was found open: it does not conduct.',
    },
  },
  'single-point-of-failure-joint': {
    title: 'No single joint or conductor holds a mast, arrester or panel alone',
    failTitle: 'One failure takes {parts} off the [electrode]s or the [service]',
    why: 'Most joints fail unseen; with one way only the failure is found by the next strike.',
    met: 'A second way, by other joints and conductors, leads to [ground] and to the [service].',
    remedy: 'Add a second way for {parts}, or look at each of these every year and record it.',
    because: {
      none: 'No mast, arrester or bar is tied to [ground].',
      single: 'Any one of these does so by failing alone: {at}.',
      'perhaps single':
        'Whether {parts} {parts?stays:stay} tied when one of these fails hangs on ties that nobody is sure of: {at}.',
      'look for second':
        'Look whether the ties of {parts} that are typed as unknown are there; type `present:` of each.',
      'two ways': '{at} stays tied when any one joint or conductor fails.',
    },
  },
} as const satisfies Record<string, RuleWords>;
