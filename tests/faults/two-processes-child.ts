// One of two processes that change the same garment: adds a line to its notes again and again, each time on what it reads then.
import { UNASKED } from '../../src/store/store.ts';
import { openShared, type SharedDatabase } from './shared-database.ts';

const [database, name, count] = process.argv.slice(2);
const { store, close } = await openShared(JSON.parse(database!) as SharedDatabase);
for (let index = 0; index < Number(count); index++)
	await store.decide(UNASKED, async (home) => {
		const garment = (await home.garments.get('g1'))!;
		return {
			does: { garments: { put: [{ ...garment, notes: `${garment.notes}\n${name}${index}` }] } },
			sentence: `Noted ${name}${index}`,
			answer: async () => null,
		};
	});
await close();
