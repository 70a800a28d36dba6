/** A thing that is kept: `version` numbers the change that made it what it is. Absent where it was never kept. No judgement reads it. */
export type Versioned = { readonly version?: number };
