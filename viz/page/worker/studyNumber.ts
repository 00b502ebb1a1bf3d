let studies = 0;

/** A number that no study had before: by it workers know whether they have a study's plans already. */
export function studyNumber(): number {
  return studies++;
}
