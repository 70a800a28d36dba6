import { randomUUID } from 'node:crypto';
import { speak } from '../../language/speak.ts';
import { openBeside } from '../../store/open-beside.ts';
import type { Deciders } from '../decide.ts';
import { doAgain, takeBack } from '../decisions/take-back.ts';
import { UserError } from '../errors.ts';
import type { ServerEvent } from '../events.ts';
import { importGarments } from '../tables/import-garments.ts';
import { importWears } from '../tables/import-wears.ts';
import type { LargeOutcome, LargeTask, LargeWork } from './large-work.ts';

type Here = Deciders & {
	readonly jobs: { enqueue(id: string): Promise<void> };
	readonly newId: () => string;
	readonly now: () => Date;
	readonly beside: null;
};

function carryOut(services: Here, work: LargeWork): Promise<unknown> {
	switch (work.what) {
		case 'import-garments':
			return importGarments(services, work.asked, work.bytes, work);
		case 'import-wears':
			return importWears(services, work.asked, work.bytes, work);
		case 'take-back':
			return takeBack(services, work.asked);
		case 'do-again':
			return doAgain(services, work.asked);
	}
}

/** Does the work over the home's database while the program goes on; see `work-beside.ts`. */
export default async function workBeside({ homePath, language, work }: LargeTask): Promise<LargeOutcome> {
	speak(language);
	const now = () => new Date();
	const store = openBeside(homePath, now);
	const events: ServerEvent[] = [];
	const toRead: string[] = [];
	const services: Here = {
		store,
		events: { send: (event) => void events.push(event), listen: () => () => {} },
		jobs: { enqueue: async (id) => void toRead.push(id) },
		newId: randomUUID,
		now,
		beside: null,
	};
	try {
		return { ok: true, answer: await carryOut(services, work), events, toRead };
	} catch (error) {
		if (!(error instanceof UserError)) throw error;
		const { code, message, details } = error;
		return { ok: false, code, message, details, events, toRead };
	} finally {
		await store.close();
	}
}
