import { say } from '../../../../src/language/speak.ts';
import type { Garment } from '../../../../src/wardrobe/words/garment.ts';
import type { LineUpChoice } from '../../../../src/wardrobe/words/season.ts';
import { Button } from '../../parts/button.tsx';
import { GarmentPhoto } from '../../parts/garment-photo.tsx';
import { SwatchStrip } from '../../parts/swatch.tsx';
import { putIn, type SetChanges, setMust, setNever, takeOut } from './set-changes.ts';

type Acting = {
	readonly garment: Garment;
	readonly choice: LineUpChoice;
	readonly onChange: (changes: SetChanges) => void;
};

function Inside({ garment: { id, name }, choice, onChange, onSwap }: Acting & { readonly onSwap: () => void }) {
	const pinned = choice.mustKeep.includes(id);
	return (
		<>
			<Button
				small
				pressed={pinned}
				onPress={() => onChange(setMust(choice, id, !pinned))}
				aria-label={say('set.pinNamed', { name })}
			>
				{say('set.pin')}
			</Button>
			<Button small onPress={onSwap} aria-label={say('set.swapNamed', { name })}>
				{say('set.swap')}
			</Button>
			<Button small onPress={() => onChange(takeOut(choice, id))} aria-label={say('set.outNamed', { name })}>
				{say('set.out')}
			</Button>
		</>
	);
}

function Outside({ garment: { id, name }, choice, onChange }: Acting) {
	const never = choice.neverUse.includes(id);
	return (
		<>
			<Button small onPress={() => onChange(putIn(choice, id))} aria-label={say('set.inNamed', { name })}>
				{say('set.in')}
			</Button>
			<Button
				small
				pressed={never}
				onPress={() => onChange(setNever(choice, id, !never))}
				aria-label={say('set.neverNamed', { name })}
			>
				{say('set.never')}
			</Button>
		</>
	);
}

/** A garment of the set, or one that could be, with what can be done about it. */
export function SetPiece({ partnerCount, onSwap, ...acting }: Acting & { partnerCount: number; onSwap: () => void }) {
	const { garment, choice } = acting;
	const isInside = choice.garmentIds.includes(garment.id);
	return (
		<li className="tile" data-inside={isInside}>
			<GarmentPhoto garment={garment} picture={isInside ? 'cutout' : 'thumb'} />
			<span className="tile-name">{garment.name}</span>
			<SwatchStrip swatches={garment.swatches} label={say('garments.coloursOf', { name: garment.name })} />
			<span className="small quiet">{say('garments.partners', { count: partnerCount })}</span>
			<span className="row tile-actions">
				{isInside ? <Inside {...acting} onSwap={onSwap} /> : <Outside {...acting} />}
			</span>
		</li>
	);
}
