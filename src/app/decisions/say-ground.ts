import { keptWords } from '../../language/kept-sentence.ts';
import { say } from '../../language/speak.ts';
import type { Asked, PhotoRecord } from '../../store/store.ts';
import type { Correction } from '../../wardrobe/words/reading.ts';
import { decideOnce } from '../decide.ts';
import { UserError } from '../errors.ts';
import { foundIn } from '../found-in.ts';
import { type GroundSet, groundSets } from '../grounds.ts';
import type { Services } from '../services.ts';

/** What is said of photos: they share one ground, each has one of its own, or the program is to judge by how they look. */
export const GROUND_WORDS = ['one', 'apart', 'by-look'] as const;
export type GroundWord = (typeof GROUND_WORDS)[number];

const SENTENCES = {
	one: 'decisions.groundOne',
	apart: 'decisions.groundApart',
	'by-look': 'decisions.groundByLook',
} as const;

export type SaidGround = { readonly photoIds: readonly string[]; readonly word: GroundWord };

/** The correction with the word on its ground; `name` is shared by those of one ground. */
function withGround({ ground: _old, ...rest }: Correction, word: GroundWord, name: string): Correction {
	if (word === 'by-look') return rest;
	return { ...rest, ground: word === 'one' ? name : null };
}

/**
 * Says which photos show one ground, as one decision; the sets after it. Their readings stay: only the light is worked out anew. Two photos or more make one
 * ground; throws `UserError` for fewer, or for a photo that is not there.
 */
export async function sayGround(
	services: Services,
	asked: Asked,
	{ photoIds, word }: SaidGround,
): Promise<GroundSet[]> {
	if (word === 'one' && photoIds.length < 2) throw new UserError('bad-request', say('refusals.oneGround'));
	const name = services.newId();
	let before: readonly PhotoRecord[] = [];
	const { changed } = await decideOnce(services, asked, async (home) => {
		const photos = await Promise.all(photoIds.map(foundIn(home.photos, 'photo')));
		before = photos;
		return {
			does: {
				corrections: await Promise.all(
					photos.map(async ({ id, correction }) => ({
						photoId: id,
						correction: withGround(correction, word, name),
						mask: await home.photos.maskOf(id),
					})),
				),
			},
			sentence: keptWords(SENTENCES[word], { count: photos.length }),
			answer: async () => null,
		};
	});
	if (changed.length > 0) {
		for (const { id, reading } of before) if (reading) await services.store.photos.saveReading(id, reading, {});
		for (const { id, reading } of before) if (!reading) await services.jobs.enqueue(id);
		await services.followGrounds();
		for (const { id } of before) services.events.send({ event: 'photo', data: { id, status: 'read' } });
	}
	return groundSets(services.store);
}
