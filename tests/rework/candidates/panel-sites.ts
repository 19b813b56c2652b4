/**
 * An invented house whose entry panel hangs at the far end of the wall: the service and its rod at the south-east corner, the panel
 * 24 ft north of them, its only wire to ground 30 ft long. Feet; the mast is north-east of the house.
 */
export const farPanel = `site:
  name: Far Panel
  region: us
  units: ft
  service: main-panel
  supply: us-grounded
  without: [telephone, cable tv, network, control]
soil: {type: clay}
buildings:
  house: {corners: [[0, 0], [40, 0], [40, 30], [0, 30]], height: 18 ft}
electrodes:
  E1: {kind: rod, at: [42, 2], length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}
  E2: {kind: rod, at: [54, 2], length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}
  E-mast: {kind: rod, at: [62, 40], length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}
supports:
  mast: {kind: mast, at: [60, 40], height: 40 ft, metal: galvanised steel, sections: bolted}
antennas:
  beam: {kind: yagi, on: mast@40 ft, dc_path: yes, touches_support: yes}
bars:
  entry: {kind: entry panel, at: [40, 26, 3], where: outside}  # over the old window
arresters:
  a1: {kind: gas tube, on: entry, sparkover: 230 V, listed: yes, near_fuel: no, joint: bolted lug}
equipment:
  main-panel: {kind: service panel, at: [40, 2, 4], where: outside, neutral_bonded: yes}
  radio: {kind: transceiver, at: [36, 24, 3], where: house, power: 50 W, swr: 1.5}
lines:
  feed: {kind: coax, cable: RG-213, path: [beam, {bond: mast@38 ft}, {bond: mast@2 ft}, a1, radio], lengths: [3 ft, 36 ft, 30 ft, 6 ft]}
  drop: {kind: mains, path: [street, main-panel], buried: yes}
  outlet: {kind: mains, path: [main-panel, radio], length: 40 ft, protective_conductor: yes}
conductors:
  service-rod: {from: main-panel, to: E1, wire: 4 AWG copper, length: 4 ft, where: outside}
  rods: {from: E1, to: E2, wire: 4 AWG copper, length: 13 ft, buried: 30 in}
  entry-rod: {from: entry, to: E1, wire: 6 AWG copper, length: 30 ft, where: outside, joints: [bolted lug, exothermic weld]}
  mast-rod: {from: mast@base, to: E-mast, wire: 4 AWG copper, length: 4 ft}
  mast-tie: {from: E-mast, to: E1, wire: 2 AWG copper, length: 45 ft, buried: 30 in}
  radio-bond: {from: radio, to: entry, wire: 6 AWG copper, length: 7 ft}
metalwork:
  gutter: {kind: gutter, metal: aluminium, continuous: yes, bonded: yes}
`;

/** The same with a short lead to a rod of its own, and a second panel at the south wall for the line of a roof antenna. */
export const twoPanels = farPanel
  .replace('  E2:', '  E3: {kind: rod, at: [41, 26], length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}\n  E2:')
  .replace('to: E1, wire: 6 AWG copper, length: 30 ft', 'to: E3, wire: 6 AWG copper, length: 3 ft')
  .replace('bars:\n', 'bars:\n  old-plate: {kind: entry panel, at: [34, -0.5, 1], where: outside}\n')
  .replace(
    'arresters:\n',
    'arresters:\n  a2: {kind: gas tube, on: old-plate, sparkover: 230 V, listed: yes, joint: bolted lug}\n',
  )
  .replace(
    'lines:\n',
    'lines:\n  second: {kind: coax, path: [whip, {bond: mast@29 ft}, {bond: mast@2 ft}, a2, radio], lengths: [1 ft, 27 ft, 70 ft, 30 ft]}\n',
  )
  .replace('antennas:\n', 'antennas:\n  whip: {kind: vertical, on: mast@30 ft, dc_path: yes, touches_support: yes}\n')
  .replace(
    'conductors:\n',
    'conductors:\n  plate-rod: {from: old-plate, to: E1, wire: 6 AWG copper, length: 12 ft, where: outside, joints: [bolted lug, exothermic weld]}\n  corner-tie: {from: E3, to: E1, wire: 2 AWG copper, length: 25 ft, buried: 30 in}\n',
  );
