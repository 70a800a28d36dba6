import { say } from '../../src/language/speak.ts';
import { KIND_NAMES, type Kind, slotOfKind } from '../../src/wardrobe/words/kind.ts';
import { SLOTS } from '../../src/wardrobe/words/slot.ts';
import { element, elementWithId } from './element.ts';

/** Kinds that a tap chooses, those looked for first: more do not fit a phone beside the photo. */
const QUICK = 5;

const optionOf = (kind: Kind): HTMLElement => element('option', { value: kind }, say(`kinds.${kind}`));

/**
 * Asks for the kind of the piece: those looked for are a tap away, all others in a list by sort. `chosen` hears of every choice. Returns what is
 * chosen, null before anything is.
 */
export function kindChoice(lookedFor: readonly Kind[], chosen: () => void): () => Kind | null {
	const select = elementWithId('kind', HTMLSelectElement);
	const quick = elementWithId('quick', HTMLElement);
	const group = (label: string, kinds: readonly Kind[]) => element('optgroup', { label }, ...kinds.map(optionOf));
	select.append(
		element('option', { value: '' }, say('pocket.choose')),
		...SLOTS.map((slot) =>
			group(
				say(`slots.${slot}`),
				KIND_NAMES.filter((kind) => slotOfKind(kind) === slot),
			),
		),
	);
	const buttons = lookedFor.slice(0, QUICK).map((kind) => {
		const button = element('button', { type: 'button', 'data-kind': kind }, say(`kinds.${kind}`));
		button.addEventListener('click', () => {
			select.value = kind;
			told();
		});
		return button;
	});
	function told(): void {
		for (const button of buttons) button.setAttribute('aria-pressed', String(button.dataset.kind === select.value));
		chosen();
	}
	if (buttons.length > 0) quick.append(element('span', {}, say('pocket.lookedFor')), ...buttons);
	quick.hidden = buttons.length === 0;
	select.addEventListener('change', told);
	return () => KIND_NAMES.find((kind) => kind === select.value) ?? null;
}
