/** One thing that is wrong in a file a person wrote: data first, wording for people. */
export interface Fault {
  /** Where: "line[4].crew"; "" is the file as a whole. */
  path: string;
  found: string;
  /** What may stand there; "" where `found` says it all. */
  allowed: string;
  /** What to do; "" where `allowed` says it all. */
  remedy: string;
}

/** One line: "line[4].crew: 'evisceratoin' is not a crew; allowed: 'evisceration'; did you mean 'evisceration'?" */
export function formatFault(fault: Fault): string {
  const where = fault.path === "" ? "the file as a whole" : fault.path;
  const allowed = fault.allowed === "" ? "" : `; allowed: ${fault.allowed}`;
  const remedy = fault.remedy === "" ? "" : `; ${fault.remedy}`;
  return `${where}: ${fault.found}${allowed}${remedy}`.replace(/\s+/gu, " ");
}
