import * as german from './de/areas.ts';
import * as english from './en/areas.ts';
import type { SameKeys } from './same-keys.ts';

/** What lies in any of some types, as one type: an intersection, which TypeScript infers where types are only taken in. */
type Joined<Part> = (Part extends unknown ? (taken: Part) => void : never) extends (taken: infer All) => void
	? { readonly [Area in keyof All]: All[Area] }
	: never;

/** The files of a language as one catalogue; no two of them name one area. */
const joined = <Files extends Readonly<Record<string, object>>>(files: Files): Joined<Files[keyof Files]> =>
	Object.assign({}, ...Object.values(files));

/** Every word of page, reports and sentences in British English, by area. Other languages have the same keys. */
export const ENGLISH = joined(english);

/** Every word in German; the compiler finds what is missing. */
export const GERMAN: SameKeys<typeof ENGLISH> = joined(german);
