import { useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
import { colourWord, type Palette, type PaletteColour } from '../../../../src/wardrobe/words/palette-colour.ts';
import type { Season } from '../../../../src/wardrobe/words/season.ts';
import { SLOTS, type Slot } from '../../../../src/wardrobe/words/slot.ts';
import { USUAL_TOLERANCE } from '../../../../src/wardrobe/words/wish.ts';
import { call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { Button } from '../../parts/button.tsx';
import { SelectField, TextField } from '../../parts/field.tsx';
import { Problem } from '../../parts/problem.tsx';

/** What a wish holds before anything is said of it. */
const plainWish = (season: Season, today: string) => ({
	seasonId: season.id,
	kind: null,
	tolerance: USUAL_TOLERANCE,
	yearParts: [season.yearPart],
	priceLimit: null,
	expectedWearsPerYear: null,
	wantedSince: today,
	state: 'open' as const,
	notes: '',
});

/** What is wished for, named by its colour and slot. */
const wishedFor = (slot: Slot, colour: PaletteColour | undefined) => ({
	name: [colour && colourWord(colour), say(`pieces.${slot}`)].filter(Boolean).join(' '),
	slot,
	target: colour?.lab ?? null,
	paletteColourId: colour?.id ?? null,
});

/** A wish of the user's own, without a gap behind it. */
export function NewWish({ season, palette, today }: { season: Season; palette: Palette; today: string }) {
	const [name, setName] = useState('');
	const [slot, setSlot] = useState<Slot>('top');
	const [colourId, setColourId] = useState('');
	const colour = palette.colours.find(({ id }) => id === colourId);
	const add = useChange(
		() =>
			call('addWish', { body: { ...plainWish(season, today), ...wishedFor(slot, colour), ...(name ? { name } : {}) } }),
		() => setName(''),
	);
	return (
		<details>
			<summary>{say('wishList.ownWish')}</summary>
			<div className="stack">
				<div className="fields">
					<TextField
						live
						label={say('fields.name')}
						value={name}
						onCommit={setName}
						placeholder={say('wishList.nameExample')}
					/>
					<SelectField
						label={say('garments.slot')}
						value={slot}
						options={SLOTS.map((one) => ({ value: one, label: say(`slots.${one}`) }))}
						onChange={setSlot}
					/>
					<SelectField
						label={say('colours.colour')}
						value={colourId}
						options={[
							{ value: '', label: say('wishList.anyColour') },
							...palette.colours.map((one) => ({ value: one.id, label: colourWord(one) })),
						]}
						onChange={setColourId}
					/>
				</div>
				<Button onPress={() => add.run(undefined)} isPending={add.busy}>
					{say('wishList.wishForIt')}
				</Button>
				<Problem of={add.problem} />
			</div>
		</details>
	);
}
