import { EventEmitter } from 'node:events';
import type { ChangedEntry } from '../store/store.ts';

/** What the page hears while it is open. */
export type ServerEvent =
	| { readonly event: 'photo'; readonly data: { readonly id: string; readonly status: 'waiting' | 'read' | 'failed' } }
	| { readonly event: 'changed'; readonly data: { readonly entries: readonly ChangedEntry[] } }
	/** Something was changed that this program did not hear of: everything on view may be old. */
	| { readonly event: 'missed'; readonly data: Record<string, never> }
	/** The line is open. */
	| { readonly event: 'hello'; readonly data: Record<string, never> };

/** Passes events from whoever changes something to every open page. */
export type EventHub = {
	send(event: ServerEvent): void;
	/** Returns the function that stops listening. */
	listen(listener: (event: ServerEvent) => void): () => void;
};

export function createEventHub(): EventHub {
	const emitter = new EventEmitter();
	emitter.setMaxListeners(0);
	return {
		send: (event) => void emitter.emit('event', event),
		listen: (listener) => {
			emitter.on('event', listener);
			return () => void emitter.off('event', listener);
		},
	};
}
