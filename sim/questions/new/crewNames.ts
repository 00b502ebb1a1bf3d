/** Who has the crates, from lorry to washer; every other crew has the name of its step. */
export const HANDLERS = "live animals";

/** Who repairs. */
export const MAINTENANCE = "maintenance";
