import type { Language } from '../../colour/words/language.ts';
import type { Asked } from '../../store/store.ts';
import type { ErrorCode } from '../errors.ts';
import type { ServerEvent } from '../events.ts';

/** What can be done beside everything else. */
export type LargeWork =
	| {
			readonly what: 'import-garments' | 'import-wears';
			readonly asked: Asked;
			readonly bytes: Uint8Array;
			readonly preview: boolean;
	  }
	| { readonly what: 'take-back' | 'do-again'; readonly asked: Asked };

/** Bytes of a table, or characters of a decision's changes, from which on its work is large: some thousand lines. */
export const LARGE = 1_000_000;

/** Work as the thread is given it. */
export type LargeTask = { readonly homePath: string; readonly language: Language; readonly work: LargeWork };

/** What came of it, and what is to be done here about it. */
export type LargeOutcome = {
	readonly events: readonly ServerEvent[];
	/** Photos that wait to be read. */
	readonly toRead: readonly string[];
} & (
	| { readonly ok: true; readonly answer: unknown }
	| { readonly ok: false; readonly code: ErrorCode; readonly message: string; readonly details: object }
);
