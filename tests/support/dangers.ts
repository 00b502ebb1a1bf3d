/** What has to be named wherever the cautions are said: what hurts, whom it hurts, who decides. */
export const NAMED_DANGERS: readonly RegExp[] = [
  /blades/i,
  /jam/,
  /electricity/i,
  /water/,
  /lift/i,
  /cold/i,
  /hot/,
  /infect/,
  /animals.*(pain|feel)/i,
  /the law at the site/i,
  /official veterinarian/,
  /makers' manuals/,
  /licensed practice/,
];
