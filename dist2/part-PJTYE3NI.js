import { createRequire as evengroundRequire } from 'node:module'; const require = evengroundRequire(import.meta.url);
import{print}from"./part-QFA4KEFX.js";import"./part-U5C7WDN5.js";import{Stop,exitCode}from"./part-SDLIX4PS.js";import"./part-25DAOGO7.js";import{existsSync}from"node:fs";var starter=`# A radio station's grounding. Change what is here to what you have, take out what you do not have, then run
#
#     evenground check <this file>
#
# Three things to know:
#   - What you do not know you leave out, or you write unknown. It is never taken as fine; the check tells you
#     what to go and look at.
#   - A figure has its unit: 8 ft, 8' 6", 5/8 in, 2.5 m, 16 mm2, 25 ohm. It may be rough: about 30 ft, 90 to 100 ft,
#     over 100 ft.
#   - Every thing has a short name of its own in front of the colon (tower, coax-1). Other places use that name.
#
# With 'evenground schema -o site.schema.json' an editor that knows YAML completes and explains every word.

site:
  name: My station
  region: us                # whose codes and words: us, ca, iec, uk, au
  units: ft                 # unit of a bare number: ft or m
  service: main-panel       # where the power comes in; none for a field station
  supply: us-grounded       # how the supply is earthed: us-grounded, tn-s, tn-c-s, tt
  without: [cable tv]       # kinds of line that do not come in at all
  # prepared: {by: your name, for: permit office, date: 2026-05-02}

# soil: {type: clay}        # or measured: {layers: [{resistivity: 120 to 250 ohm m}], known: measured}

buildings:
  house: {}                 # with a plan: {corners: [[0, 0], [48, 0], [48, 30], [0, 30]], height: 16 ft}

# What is in the ground. 'known' says how you know it: seen, told, measured, assumed, planned.
electrodes:
  service-rod: {kind: rod, length: {is: 8 ft, known: told}, note: the top is under the gravel by the meter}
  mast-rod: {kind: rod, length: 8 ft, diameter: 5/8 in, metal: copper-clad steel, known: seen}

# What holds the antennas up. A place on it is written mast@20 ft, mast@top, mast@base.
supports:
  mast: {kind: mast, height: 25 ft, metal: galvanised steel, sections: unknown}

antennas:
  vertical: {kind: ground plane, on: mast@top, touches_support: yes, dc_path: unknown}

# Plates and bars on which wires meet.
bars:
  entry: {kind: entry panel, where: outside}

# Protectors. 'arresters: none' means that you looked and there are none; a section left out was not looked at.
arresters:
  coax-protector: {kind: gas tube, on: entry, listed: unknown}

equipment:
  main-panel: {kind: service panel, where: house, neutral_bonded: unknown, rating: 100 A}
  radio: {kind: transceiver, where: house, power: 100 W, within_reach: [computer]}
  computer: {kind: computer, where: house}
  router: {kind: router, where: house}

# Cables, in the order of their stops. {bond: ...}: the shield is clamped there. {plug: ...}: a connector that you
# pull by hand. street: the world outside. unknown: nobody has looked.
lines:
  coax-1: {kind: coax, path: [vertical, {bond: mast@1 ft}, coax-protector, {plug: desk-plug}, radio], lengths: [24 ft, 12 ft, 9 ft, 3 ft]}
  usb-1: {kind: usb, path: [radio, computer], length: 6 ft}
  radio-cord: {kind: mains, path: [main-panel, radio], protective_conductor: yes}
  computer-cord: {kind: mains, path: [main-panel, computer], protective_conductor: yes}
  power: {kind: mains, path: [street, main-panel], overhead: unknown}
  internet: {kind: telephone, path: [street, unknown, router]}       # there must be a box outside; go and look
  lan-1: {kind: network, path: [router, computer], length: 20 ft}

# Wires and straps of bare or insulated metal that do nothing but bond. 'joints' names what holds each end.
conductors:
  service-wire: {from: main-panel, to: service-rod, wire: 6 AWG copper, length: unknown}
  mast-wire: {from: mast@base, to: mast-rod, wire: 6 AWG copper, length: 3 ft, joints: [bolted lug, acorn clamp]}
  entry-wire: {from: entry, to: mast-rod, wire: 6 AWG copper, length: about 10 ft, joints: [bolted lug, unknown]}

metalwork:
  gas: {kind: gas pipe, bonded: unknown}
  water: {kind: water pipe, bonded: unknown}

# The same site on another day.
states:
  storm: {says: the coax is pulled off the radio, open: [desk-plug]}
`;function newFile(file){if(file!=="-"&&existsSync(file))throw new Stop(exitCode.output,`${file}: is there already and was not touched. Name another file.`);return print(starter,file),file!=="-"&&process.stderr.write(`${file} written. Next: evenground check ${file}
`),exitCode.fine}export{newFile};
