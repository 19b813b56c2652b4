import { describe, expect, it } from 'vitest';
import { siteOf } from './read-text.ts';

const defaultsOf = (text: string) => siteOf(text).defaults.map(({ path, taken, key }) => [path, taken, key]);

describe('defaults that were taken', () => {
  it('are none where the file says everything', () => {
    const text = [
      'site: {units: ft}',
      'electrodes:',
      '  rod: {kind: rod, known: seen, top: 0 in}',
      '  ring: {kind: buried wire, known: told, wire: 2 AWG copper bare}',
      '',
    ];
    expect(defaultsOf(text.join('\n'))).toEqual([]);
  });

  it('are listed with the place and what was taken', () => {
    const text = [
      'site: {region: us}',
      'electrodes:',
      '  rod: {kind: rod}',
      '  set: {kind: rods, count: unknown, top: 1 ft}',
      '  ring: {kind: buried wire, wire: 2 AWG copper}',
      'equipment:',
      '  radio: {kind: transceiver, count: unknown}',
      '',
    ];
    expect(defaultsOf(text.join('\n'))).toEqual([
      ['site.units', 'ft', 'default-units'],
      ['known', 'told', 'default-known'],
      ['electrodes.rod.top', '0', 'default-top'],
      ['electrodes.ring.wire', 'bare', 'default-bare'],
      ['equipment.radio.count', '1', 'default-count'],
    ]);
  });

  it('do not stand for what is unknown: an unknown top is not at grade', () => {
    expect(defaultsOf('site: {units: m}\nelectrodes:\n  rod: {kind: rod, top: unknown, known: seen}\n')).toEqual([]);
    expect(siteOf('electrodes:\n  rod: {kind: rod, top: unknown}\n').electrodes[0]!.topM).toBeNull();
  });
});
