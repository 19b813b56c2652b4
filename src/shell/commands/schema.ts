import type { Schema } from '../../site/format/field.ts';
import { jsonSchema } from '../../site/json-schema.ts';
import { agreedSchema, standardSchema } from '../../site/standard/side-file-schemas.ts';
import { nearName } from '../../units/near-name.ts';
import { ruleWords } from '../../words/rules/index.ts';
import { say } from '../../words/say.ts';
import { type ExitCode, exitCode, Stop } from '../exit-code.ts';
import { knownRules } from '../known-rules.ts';
import { print } from '../print.ts';

/** Files that have a schema, by the word that names them in a site file. */
const schemas: Readonly<Record<string, () => Schema>> = {
  site: jsonSchema,
  standard: () => standardSchema(knownRules().map((r) => ({ ...r, says: `${titleOf(r.id)}.` }))),
  agreed: agreedSchema,
};

/** The JSON Schema of the site file, of an owner's standard, or of a file of findings that were agreed to stand. */
export function schema(of: string, options: { readonly output?: string }): ExitCode {
  const make = Object.hasOwn(schemas, of) ? schemas[of] : undefined;
  if (make === undefined) throw new Stop(exitCode.input, unknownFile(of));
  print(`${JSON.stringify(make(), null, 2)}\n`, options.output);
  return exitCode.fine;
}

function titleOf(id: string): string {
  return say(ruleWords[id]!.title, {}, { terms: 'us', unitsFirst: 'us' });
}

function unknownFile(of: string): string {
  const names = Object.keys(schemas);
  const near = nearName(of, names);
  const meant = near === null ? '' : ` Did you mean ${near}?`;
  return `${of}: no schema has this name.${meant} All of them: ${names.join(', ')}`;
}
