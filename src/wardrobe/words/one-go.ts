/** Photos taken in one go follow each other within this time, and share the lamp. Common practice, no source. */
export const ONE_GO_MS = 10 * 60_000;
