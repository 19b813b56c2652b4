import { expect, it } from 'vitest';
import { sayField, sayToType } from '../../src/words/field-words.ts';

it.each([
  ['electrodes.R1.present', 'whether R1 is there'],
  ['conductors.thick-one.to', 'where the other end of thick-one goes'],
  ['supports.tower.guys.guy-1.metal', 'whether guy-1 is of metal'],
  ['conductors', 'what else belongs under `conductors:`'],
  ['soil.frost', '`soil.frost`'],
])('says what has to be found out at %s', (path, said) => {
  expect(sayField(path)).toBe(said);
});

it.each([
  ['electrodes.R1.present', 'whether R1 is there (`present:`)'],
  ['conductors', 'what else belongs under `conductors:`'],
  ['soil.frost', '`soil.frost`'],
])('says what is typed after a look at %s', (path, said) => {
  expect(sayToType(path)).toBe(said);
});
