import type { Notice, Notices } from '../../store/postgres/notices.ts';
import type { ChangedEntry } from '../../store/store.ts';
import { createEventHub, type EventHub, type ServerEvent } from '../events.ts';

/** Entries told in one notice: with ids of 36 letters each it stays well under what the database takes. */
const ENTRIES_A_NOTICE = 40;

/** The event in pieces that a notice can carry. */
function piecesOf(event: ServerEvent): ServerEvent[] {
	if (event.event !== 'changed') return [event];
	const { entries } = event.data;
	const pieces: ServerEvent[] = [];
	for (let at = 0; at < entries.length; at += ENTRIES_A_NOTICE) {
		const part: readonly ChangedEntry[] = entries.slice(at, at + ENTRIES_A_NOTICE);
		pieces.push({ event: 'changed', data: { entries: part } });
	}
	return pieces;
}

/** Events of each home, passed to the open pages of every server. */
export type HostedEvents = {
	of(homeId: string): EventHub;
	/** A notice came, from this process or another. */
	heard(notice: Notice): void;
	/** Notices may have been missed. */
	missed(): void;
};

/** `tell` passes a notice on to all processes; `report` hears where that failed. */
export function createHostedEvents(tell: Notices['tell'], report: (error: unknown) => void): HostedEvents {
	/** Pages that are open here, by home. */
	const listening = new Map<string, { readonly hub: EventHub; pages: number }>();

	function listen(homeId: string, listener: (event: ServerEvent) => void): () => void {
		const here = listening.get(homeId) ?? { hub: createEventHub(), pages: 0 };
		listening.set(homeId, here);
		here.pages++;
		const stop = here.hub.listen(listener);
		let isOpen = true;
		return () => {
			stop();
			if (isOpen) here.pages--;
			isOpen = false;
			if (here.pages === 0 && listening.get(homeId) === here) listening.delete(homeId);
		};
	}
	return {
		of: (homeId) => ({
			send(event) {
				for (const piece of piecesOf(event)) tell({ home: homeId, ...piece }).catch(report);
			},
			listen: (listener) => listen(homeId, listener),
		}),
		heard: ({ home, event, data }) => listening.get(home)?.hub.send({ event, data } as ServerEvent),
		missed: () => {
			for (const { hub } of listening.values()) hub.send({ event: 'missed', data: {} });
		},
	};
}
