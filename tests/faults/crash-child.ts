// Lives one round in a home and is killed at a given step of it. Prints each step before it begins and once it is acknowledged.
import { writeSync } from 'node:fs';
import { join } from 'node:path';
import { seededRandom } from '../../src/wardrobe/words/seeded-random.ts';
import { dieAtStep } from './crash-points.ts';
import { carryOut, stepsOfRound } from './life-of-a-home.ts';

const [homePath, round, dieAt, powerCut] = process.argv.slice(2);
const stepsTaken = dieAtStep(
	Number(dieAt),
	{ powerCut: powerCut === 'power-cut', logPath: join(homePath!, 'dyelot.sqlite-wal') },
	seededRandom(`${round} ${dieAt}`),
);
// After the watch is set, so that opening the home is among the steps at which it may die.
const { openHome } = await import('../../src/store/open-home.ts');

const say = (line: string) => writeSync(1, `${line}\n`);
const home = await openHome(homePath!, { now: () => new Date('2026-03-01T08:00:00.000Z') });
for (const [index, step] of stepsOfRound(Number(round)).entries()) {
	say(`begun ${index}`);
	await carryOut(home.store, step);
	say(`done ${index}`);
}
await home.close();
say(`steps ${stepsTaken()}`);
