import { join } from 'node:path';
import { temporaryFolder } from '../support/temporary-home.ts';
import { crashAgainAndAgain, stepsInRound } from './crashes.ts';
import { atLeast, type Figures, noneOf } from './figure.ts';

/** Deaths spread over every step of a round of imports and decisions, every second one with loss of unsynced pages. */
export async function storeKills(kills: number): Promise<Figures> {
	const steps = await stepsInRound(join(temporaryFolder(), 'home'));
	const dieAt = Array.from({ length: kills }, (_, index) => 1 + Math.floor(((index * 0.618034) % 1) * steps));
	const crashes = await crashAgainAndAgain(join(temporaryFolder(), 'home'), dieAt);
	return {
		figures: [
			noneOf(
				`of ${crashes.kills} kills (${crashes.powerCuts} with unsynced pages lost), homes that do not open or lost something of ${crashes.acknowledged} acknowledged changes`,
				crashes.faults,
			),
			atLeast('deaths at a step', crashes.kills, Math.floor(kills / 2)),
			atLeast('steps in a round at which it may die', steps, 100),
			atLeast('changes acknowledged before the deaths', crashes.acknowledged, kills),
		],
	};
}
