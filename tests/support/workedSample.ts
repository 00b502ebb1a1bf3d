/** Ten replications of heads per hour, invented: a base case and a variant with the same random numbers, pair by pair. */
export const BASE_SAMPLE: readonly number[] = Object.freeze([612, 598, 605, 621, 590, 609, 617, 600, 595, 613]);
export const VARIANT_SAMPLE: readonly number[] = Object.freeze([619, 603, 615, 626, 598, 612, 628, 604, 601, 622]);
