import {
	addSession,
	changeToken,
	endSessions,
	type FoundSession,
	noteSeen,
	removeOldSessions,
	sessionWith,
} from '../../store/postgres/accounts/sessions.ts';
import { deviceName } from '../device-name.ts';
import { hashOfToken, newToken } from '../token.ts';
import type { Host } from './host.ts';
import { lookAgainAtLines } from './open-lines.ts';

const HOUR_MS = 3600 * 1000;
/** Unused for so long, a session is over; and so it is this long after signing in, however much it is used. */
export const UNUSED_S = 14 * 24 * 3600;
const LONGEST_MS = 90 * 24 * HOUR_MS;
/** A token is replaced after a day of use; the one before it is good for requests that were on their way. */
const CHANGED_AFTER_MS = 24 * HOUR_MS;
const PREVIOUS_GOOD_MS = 60 * 1000;

type Sessions = Pick<Host, 'accounts' | 'now' | 'newId'>;

/** A session just begun, or its token just changed: the token to keep. */
export type SignedIn = { readonly token: string };

const isOver = ({ seenAt, signedInAt }: FoundSession, at: Date): boolean =>
	at.getTime() - Date.parse(seenAt) > UNUSED_S * 1000 || at.getTime() - Date.parse(signedInAt) > LONGEST_MS;

/** Begins a session for a person, with a token of its own. Those that are over, of whomever, go. */
export async function beginSession(
	{ accounts, now, newId }: Sessions,
	person: string,
	userAgent: string | undefined,
): Promise<SignedIn> {
	const token = newToken();
	const ago = (ms: number) => new Date(now().getTime() - ms).toISOString();
	await removeOldSessions(accounts, { seenBefore: ago(UNUSED_S * 1000), begunBefore: ago(LONGEST_MS) });
	await addSession(accounts, {
		id: newId(),
		person,
		tokenHash: hashOfToken(token),
		device: deviceName(userAgent),
		at: now().toISOString(),
	});
	return { token };
}

/** Ends the session that a token names, if there is one: the browser that shows it gets another. */
export async function leaveSession(host: Pick<Host, 'accounts' | 'events'>, token: string | undefined): Promise<void> {
	if (token === undefined) return;
	const found = await sessionWith(host.accounts, { tokenHash: hashOfToken(token) }, null);
	if (!found) return;
	await endSessions(host.accounts, found.person.id, { id: found.id });
	await lookAgainAtLines(host, found.person.id);
}

/**
 * Whether a session that was recognised once is still let into the home. Looks only: the token that a line of news was opened with grows old
 * while the browser goes on with the next.
 */
export async function isStillIn({ accounts, now }: Sessions, id: string, home: string): Promise<boolean> {
	const found = await sessionWith(accounts, { id }, home);
	return found !== null && found.role !== null && !isOver(found, now());
}

/** Whose session it is and what they may do in `home` (null = no home is asked for); `token` where it has been replaced just now. */
export async function recognise(
	{ accounts, now }: Sessions,
	token: string | undefined,
	home: string | null,
): Promise<(FoundSession & { readonly token: string | null }) | null> {
	if (token === undefined) return null;
	const from = hashOfToken(token);
	const found = await sessionWith(accounts, { tokenHash: from }, home);
	if (!found) return null;
	const at = now();
	const since = (iso: string) => at.getTime() - Date.parse(iso);
	// Somebody shows a token that was replaced long ago: it was copied, or this is the copy.
	const isCopied = found.isPrevious && since(found.changedAt) > PREVIOUS_GOOD_MS;
	if (isOver(found, at) || isCopied) {
		await endSessions(accounts, found.person.id, { id: found.id });
		return null;
	}
	if (!found.isPrevious && since(found.changedAt) > CHANGED_AFTER_MS) {
		const next = newToken();
		const to = hashOfToken(next);
		const changed = await changeToken(accounts, { id: found.id, from, to, at: at.toISOString() });
		return { ...found, token: changed ? next : null };
	}
	if (since(found.seenAt) > HOUR_MS) await noteSeen(accounts, found.id, at.toISOString());
	return { ...found, token: null };
}
