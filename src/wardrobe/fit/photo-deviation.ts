/**
 * A stated error is a length in three directions that 80 % of errors stay under. The length of a normal error in three directions stays under 2.154 standard
 * deviations 80 % of the time (chi distribution with 3 degrees of freedom), so this turns the one into the other.
 */
const ERROR_TO_DEVIATION = 1 / 2.154;

/** No photo is imagined worse than this (CIEDE2000): the worst uncorrected phone photo of a chart that was measured erred by 17 on average. */
const ERROR_AT_MOST = 17;

/** Standard deviation of a photo's error along one direction, CIEDE2000, by the error that is stated of it. */
export const deviationOf = (error: number): number => Math.min(ERROR_AT_MOST, error) * ERROR_TO_DEVIATION;
