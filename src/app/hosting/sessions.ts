import {
	addSession,
	changeToken,
	endSessions,
	type FoundSession,
	noteSeen,
	sessionWith,
} from '../../store/postgres/accounts/sessions.ts';
import { deviceName } from '../device-name.ts';
import { hashOfToken, newToken } from '../token.ts';
import type { Host } from './host.ts';

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

/** Begins a session for a person, with a token of its own. */
export async function beginSession(
	{ accounts, now, newId }: Sessions,
	person: string,
	userAgent: string | undefined,
): Promise<SignedIn> {
	const token = newToken();
	await addSession(accounts, {
		id: newId(),
		person,
		tokenHash: hashOfToken(token),
		device: deviceName(userAgent),
		at: now().toISOString(),
	});
	return { token };
}

/** Whose session it is and what they may do in `home` (null = no home is asked for); `token` where it has been replaced just now. */
export async function recognise(
	{ accounts, now }: Sessions,
	token: string | undefined,
	home: string | null,
): Promise<(FoundSession & { readonly token: string | null }) | null> {
	if (token === undefined) return null;
	const from = hashOfToken(token);
	const found = await sessionWith(accounts, from, home);
	if (!found) return null;
	const at = now();
	const since = (iso: string) => at.getTime() - Date.parse(iso);
	const isOver = since(found.seenAt) > UNUSED_S * 1000 || since(found.signedInAt) > LONGEST_MS;
	// Somebody shows a token that was replaced long ago: it was copied, or this is the copy.
	const isCopied = found.isPrevious && since(found.changedAt) > PREVIOUS_GOOD_MS;
	if (isOver || isCopied) {
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
