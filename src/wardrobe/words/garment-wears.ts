import { moneyText } from '../../language/numbers.ts';
import { say } from '../../language/speak.ts';
import { daysBetween } from './days-between.ts';
import type { Garment } from './garment.ts';
import { slotOfKind } from './kind.ts';
import type { Slot } from './slot.ts';
import type { Wear } from './wear.ts';

/** What the wears say of one garment, over the whole time noted. */
export type GarmentWear = {
	readonly garmentId: string;
	readonly wears: number;
	/** Wears in the twelve months up to today. */
	readonly wearsThisYear: number;
	/** ISO date; null = never noted. */
	readonly lastWorn: string | null;
	/** Days since; null = never noted. */
	readonly unwornDays: number | null;
	/** Price by wears; null where either is not known. */
	readonly costPerWear: number | null;
	readonly sentence: string;
};

const YEAR_DAYS = 365;

/** Worn at least this often in twelve months, a garment has earned its place. Common practice, no source. */
export const WORN_OFTEN = 10;

function wearSentence(
	{ name, price }: Garment,
	wears: number,
	unwornDays: number | null,
	costPerWear: number | null,
): string {
	if (wears === 0) return say('wears.none', { name });
	const last = unwornDays === 0 ? say('wears.today') : say('wears.ago', { count: unwornDays ?? 0 });
	const cost =
		price === 0
			? say('wears.free')
			: costPerWear === null
				? say('wears.noPrice')
				: say('wears.cost', { cost: moneyText(costPerWear) });
	return say('wears.some', { count: wears, last, cost });
}

function garmentWear(garment: Garment, dates: readonly string[], today: string): GarmentWear {
	const lastWorn = [...dates].sort().at(-1) ?? null;
	const unwornDays = lastWorn === null ? null : Math.max(0, daysBetween(lastWorn, today));
	const costPerWear = garment.price !== null && dates.length > 0 ? garment.price / dates.length : null;
	return {
		garmentId: garment.id,
		wears: dates.length,
		wearsThisYear: dates.filter((on) => daysBetween(on, today) < YEAR_DAYS).length,
		lastWorn,
		unwornDays,
		costPerWear,
		sentence: wearSentence(garment, dates.length, unwornDays, costPerWear),
	};
}

/** Slots that people leave out when they note what they wore. Common practice, no source. */
const LEFT_OUT: readonly Slot[] = ['legwear', 'accessory'];

/** Tells of which garments no noted wear means not worn: of tights, socks and accessories only where some of their slot was ever noted. */
export function wearsTell(garments: readonly Garment[], wears: readonly Wear[]): (garment: Garment) => boolean {
	const worn = new Set(wears.map(({ garmentId }) => garmentId));
	const noted = new Set(garments.filter(({ id }) => worn.has(id)).map(({ kind }) => slotOfKind(kind)));
	return ({ kind }) => !LEFT_OUT.includes(slotOfKind(kind)) || noted.has(slotOfKind(kind));
}

/** What the wears say of each garment, in their order; wears on days after `today` are left out. */
export function garmentWears(garments: readonly Garment[], wears: readonly Wear[], today: string): GarmentWear[] {
	const dates = new Map<string, string[]>();
	for (const { garmentId, on } of wears) {
		if (on > today) continue;
		const known = dates.get(garmentId);
		if (known) known.push(on);
		else dates.set(garmentId, [on]);
	}
	return garments.map((garment) => garmentWear(garment, dates.get(garment.id) ?? [], today));
}
