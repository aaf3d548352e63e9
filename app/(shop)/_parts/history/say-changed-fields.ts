const NAMES: Readonly<Record<string, string>> = {
  name: 'name',
  maker: 'maker',
  kind: 'kind',
  unit: 'counted in',
  densityGramsPerLitre: 'density, g/L',
  packageSize: 'package size',
  tareMg: 'empty weight, mg',
  policyKind: 'whether an inspection extends it',
  statedLifeCount: 'keeps sealed',
  statedLifeUnit: 'keeps sealed, counted in',
  statedLifeBasis: 'keeps sealed, from',
  openedLifeCount: 'keeps opened',
  openedLifeUnit: 'keeps opened, counted in',
  openedLifeBasis: 'keeps opened, from',
  careWindowDays: 'days of care before the limit',
  freezingRuins: 'freezing ruins it',
  storageLeastTenthsC: 'coldest, tenths of a degree',
  storageMostTenthsC: 'warmest, tenths of a degree',
  colourShows: 'colour shows',
  systemId: 'resin system',
  part: 'part of the system',
  hazards: 'hazard signs',
  safetySheet: 'safety data sheet',
  note: 'note',
  purpose: 'purpose',
  client: 'client',
  dayOfUse: 'day of use',
  state: 'state',
  dueOn: 'due day',
  contact: 'contact',
  count: 'how many',
  shape: 'shape',
  lengthNm: 'length',
  widthNm: 'width',
  thicknessNm: 'thickness',
  timeZone: 'time zone',
  units: 'units',
  dateOrder: 'order of typed dates',
  houseLengthNm: 'shortest offcut to keep',
  houseWidthNm: 'narrowest offcut to keep',
  kerfNm: 'kerf',
};

/** Changed fields as the book keeps them (`careWindowDays: 14 → 30; name: …`), with the fields named for people. */
export function sayChangedFields(why: string): string {
  return why.replaceAll(/(^|; )([A-Za-z]+):/g, (whole, before: string, key: string) => {
    const name = NAMES[key];
    return name ? `${before}${name}:` : whole;
  });
}
