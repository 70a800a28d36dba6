import { dayText, numberText } from '../../src/language/numbers.ts';
import { say } from '../../src/language/speak.ts';
import type { SoughtPiece } from '../../src/wardrobe/pictures/sought-pieces.ts';
import type { PocketData } from '../../src/wardrobe/season/pocket-data.ts';
import { colourWord } from '../../src/wardrobe/words/palette-colour.ts';
import { saidColour } from '../../src/wardrobe/words/said-colour.ts';
import type { Wish } from '../../src/wardrobe/words/wish.ts';
import { element, elementWithId } from './element.ts';
import { swatchView } from './swatch-view.ts';

function wishView({ name, slot, kind, target, priceLimit }: Wish): HTMLElement {
	const what = [
		say(kind === null ? `pieces.${slot}` : `kinds.${kind}`),
		target ? saidColour(target) : say('pocket.anyColour'),
		priceLimit === null ? '' : say('pocket.upTo', { price: numberText(priceLimit) }),
	];
	return swatchView(target, name, say('pocket.wish', { what: what.filter(Boolean).join(', ') }));
}

/** A piece that pictures wear and nothing owned answers, called by its word: the plum coat of two pictures. */
const soughtView = ({ name, pictures, example }: SoughtPiece): HTMLElement =>
	swatchView(example.swatches[0]?.lab ?? null, name, say('pocket.ofPictures', { count: pictures }));

/** Pieces asked for by pictures are shown up to so many: more nobody looks for at once. */
const SOUGHT_SHOWN = 6;

function showWishes(wishes: readonly Wish[], sought: readonly SoughtPiece[]): void {
	const names = new Set(wishes.map(({ name }) => name));
	const rows = [
		...wishes.map(wishView),
		...sought
			.filter(({ name }) => !names.has(name))
			.slice(0, SOUGHT_SHOWN)
			.map(soughtView),
	];
	elementWithId('wishes', HTMLElement).append(...(rows.length > 0 ? rows : [element('li', {}, say('pocket.noWish'))]));
}

/** A picture with words under it; the words alone where there is no picture. */
export const pictureView = (picture: string | undefined, words: string): HTMLElement =>
	element(
		'li',
		{},
		picture ? element('img', { src: picture, alt: '', loading: 'lazy' }) : '',
		element('small', {}, words),
	);

/** Shows what the file holds of the season: its name, what to look for, its palette, and what is owned. */
export function showSeason({ input, pictures }: PocketData, sought: readonly SoughtPiece[]): void {
	elementWithId('season', HTMLElement).textContent = input.season.name;
	elementWithId('made', HTMLElement).textContent = say('pocket.made', { day: dayText(input.today) });
	showWishes(
		input.wishes.filter(({ state }) => state === 'open'),
		sought,
	);
	elementWithId('palette', HTMLElement).append(
		...input.palette.colours.map((colour) =>
			swatchView(
				colour.lab,
				colourWord(colour),
				`${say(`roles.${colour.role}`)}, ${say('pocket.share', { percent: Math.round(colour.weight * 100) })}`,
			),
		),
	);
	elementWithId('garments', HTMLElement).append(
		...input.garments
			.filter(({ place }) => place === 'rail' || place === 'stored')
			.map(({ id, name }) => pictureView(pictures[id], name)),
	);
}
