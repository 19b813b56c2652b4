/**
 * What is to be found out about a field that decides, in words: `electrodes.R1.present` is "whether R1 is there". The path
 * itself stays where a person has to type the answer.
 */
export function sayField(path: string): string {
  if (!path.includes('.')) return `what else belongs under \`${path}:\``;
  const parts = path.split('.');
  const field = parts.at(-1)!;
  const id = parts.at(-2)!;
  const words = Object.hasOwn(fieldWords, field) ? fieldWords[field] : undefined;
  return words === undefined ? `\`${path}\`` : words.replace('{id}', id);
}

/** The same for somebody who goes to look, with the field to type afterwards: `whether E1 is there (`present:`)`. */
export function sayToType(path: string): string {
  const said = sayField(path);
  return said.includes('`') ? said : `${said} (\`${path.split('.').at(-1)}:\`)`;
}

const fieldWords: Readonly<Record<string, string>> = {
  present: 'whether {id} is there',
  bonded: 'what {id} is bonded to, if anything',
  from: 'where the first end of {id} goes',
  to: 'where the other end of {id} goes',
  condition: 'whether {id} is whole',
  continuous: 'whether the metal of {id} is continuous',
  metal: 'whether {id} is of metal',
  sections: 'how the sections of {id} are joined',
  jumpers: 'whether {id} has jumpers across its sections',
  insulators: 'whether {id} has insulators',
  touches_support: 'whether {id} touches its support',
  protective_conductor: 'whether {id} has a protective conductor',
  path: 'the whole way of {id}',
  joined: 'whether the rods of {id} are joined',
  cage: 'whether the cage of {id} is tied',
  dc_path: 'whether {id} joins its feed conductors at DC',
};
