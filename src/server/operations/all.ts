import { candidateOperations } from './candidates.ts';
import { exportOperations } from './exports.ts';
import { garmentOperations } from './garments.ts';
import { groundOperations } from './grounds.ts';
import { homeOperations } from './home.ts';
import { inspirationOperations } from './inspirations.ts';
import { lineUpOperations } from './line-up.ts';
import { makerOperations } from './makers.ts';
import { paletteOperations } from './palette.ts';
import { photoOperations } from './photos.ts';
import { seasonOperations } from './seasons.ts';
import { wearOperations } from './wears.ts';
import { wishOperations } from './wishes.ts';

/** Every operation of the interface, by its id. */
export const OPERATIONS = {
	...homeOperations,
	...photoOperations,
	...groundOperations,
	...seasonOperations,
	...inspirationOperations,
	...paletteOperations,
	...garmentOperations,
	...wishOperations,
	...candidateOperations,
	...makerOperations,
	...lineUpOperations,
	...wearOperations,
	...exportOperations,
} as const;

export type Operations = typeof OPERATIONS;
export type OperationId = keyof Operations;
