import { childOf } from '../reading/tree.ts';
import type { TypedSite } from '../reading/typed-site.ts';
import type { Agreement, CodeRef, SiteHeader } from '../site.ts';

/** Unit that is printed first where the file does not say: feet in the United States and Canada, else metres. */
export function unitsOf(region: SiteHeader['region']): 'ft' | 'm' {
  return region === 'us' || region === 'ca' ? 'ft' : 'm';
}

export function buildHeader({ header: values, headerNode }: TypedSite): SiteHeader {
  const region = values.region ?? 'unknown';
  const isTyped = (field: string) => headerNode !== null && childOf(headerNode, field) !== null;
  return {
    name: values.name,
    region,
    units: values.units ?? unitsOf(region),
    service: values.service ?? 'unknown',
    supply: values.supply ?? 'unknown',
    codes: codesOf(values.code),
    codeSets: values.codes === null || values.codes.length === 0 ? [region] : [...new Set(values.codes)],
    prepared: values.prepared ?? { by: null, for: null, date: null },
    address: values.address,
    owner: values.owner,
    permit: values.permit,
    revision: values.revision,
    northDeg: values.north,
    claims: values.claims,
    standard: values.standard,
    incomplete: values.incomplete ?? [],
    without: values.without ?? [],
    temporary: values.temporary ?? (isTyped('temporary') ? 'unknown' : 'no'),
    ...(isTyped('certificate') ? { certificate: values.certificate } : {}),
    stormPlan: values.storm_plan ?? 'unknown',
    servicesLocated: values.services_located ?? 'unknown',
    agreed: agreedOf(values.agreed),
    agreedIn: values.agreed_in,
  };
}

function codesOf(codes: TypedSite['header']['code']): readonly CodeRef[] {
  return (codes ?? []).flatMap((code) => {
    if (code === null || code.document === null) return [];
    return [{ document: code.document, edition: code.edition, amendments: code.amendments }];
  });
}

function agreedOf(agreed: TypedSite['header']['agreed']): readonly Agreement[] {
  return (agreed ?? []).flatMap(({ rule, at, reason, by, date }) =>
    rule === null ? [] : [{ rule, at: at?.text ?? null, reason, by, date }],
  );
}
