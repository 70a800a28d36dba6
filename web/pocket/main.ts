import { say, speak } from '../../src/language/speak.ts';
import { PAPER_LIGHTNESS } from '../../src/reading/light/neutral-guard.ts';
import { patternByShare } from '../../src/reading/swatches/pattern-by-share.ts';
import { soughtPieces } from '../../src/wardrobe/pictures/sought-pieces.ts';
import { wearableBoard } from '../../src/wardrobe/pictures/wearable-pictures.ts';
import type { PocketData } from '../../src/wardrobe/season/pocket-data.ts';
import type { NeutralJudgement, NeutralPoint } from '../../src/wardrobe/words/reading.ts';
import { elementWithId } from './element.ts';
import { kindChoice } from './kind-choice.ts';
import { type Point, photoView } from './photo-view.ts';
import { readingInHand } from './reading-in-hand.ts';
import { showSeason } from './season-view.ts';
import { verdictOf } from './verdict.ts';
import { verdictView } from './verdict-view.ts';
import { whiteInHand, whiteQuestion } from './white-question.ts';

const data = JSON.parse(elementWithId('data', HTMLScriptElement).textContent ?? '') as PocketData;
speak(data.language);
const { input } = data;
const sought = soughtPieces(
	wearableBoard(input),
	input.garments.filter(({ place }) => place !== 'gone'),
);
const status = elementWithId('status', HTMLElement);
const answer = elementWithId('answer', HTMLElement);
const question = elementWithId('question', HTMLElement);
const price = elementWithId('price', HTMLInputElement);
const isNew = elementWithId('new', HTMLInputElement);
/** The white that was tapped and can be one, or null. */
let white: NeutralPoint | null = null;
let mode: 'white' | 'piece' = 'piece';

const lookedFor = [
	...input.wishes.flatMap(({ state, kind }) => (state === 'open' && kind !== null ? [kind] : [])),
	...sought.flatMap(({ example }) => example.kind ?? example.kinds[0]?.kind ?? []),
];
const kindOf = kindChoice([...new Set(lookedFor)], () => {
	const isTold = kindOf() !== null;
	elementWithId('kind-first', HTMLElement).hidden = isTold;
	elementWithId('photo-choice', HTMLElement).hidden = !isTold;
	judge();
});

/** What is told of the piece's price; null where nothing is. */
const priceTold = (): number | null => (Number.isFinite(price.valueAsNumber) ? Math.max(0, price.valueAsNumber) : null);

/** Reads and judges the marked piece once its kind is told; nothing before. */
function judge(): void {
	const mask = photo.mask();
	const kind = kindOf();
	if (!mask || kind === null) return;
	const reading = readingInHand(photo.inHand(), mask, kind, white ? [white] : []);
	if (!reading) return;
	const { swatches, trust, neutrals } = reading;
	// With the piece known, the white may turn out to be none, or the piece itself.
	const found = neutrals?.[0];
	if (white && found) askAbout(found, white);
	const told = say('pocket.trust', { error: Math.round(trust.error), reasons: trust.reasons.join('; ') });
	status.textContent = [told, say('colours.seenFrom'), trust.advice ?? ''].filter(Boolean).join(' ');
	const appearance = { swatches, trust, pattern: patternByShare(swatches) };
	const check = verdictOf(input, { kind, price: priceTold(), used: !isNew.checked }, appearance);
	answer.replaceChildren(...verdictView(check, appearance, data.pictures));
}

const photo = photoView(elementWithId('stage', HTMLElement), elementWithId('photo', HTMLCanvasElement), () => mode, {
	white: tapWhite,
	piece: judge,
});

/** Takes what was tapped as white, asks about it, or says why it is none. */
function tapWhite(at: Point): void {
	const point = { ...at, lightness: PAPER_LIGHTNESS };
	const [mask, kind] = [photo.mask(), kindOf()];
	const found = whiteInHand(photo.inHand(), point, mask && kind ? { mask, kind } : null);
	if (found.answer === 'taken') takeWhite(point);
	if (found.answer === 'refused') takeWhite(null, say('pocket.notWhite'));
	askAbout(found, point);
}

/** Shows what is wrong with a white, if anything, and asks whether it is one all the same. */
function askAbout(found: NeutralJudgement, point: NeutralPoint): void {
	question.replaceChildren();
	if (found.answer === 'taken') return;
	question.append(
		whiteQuestion(elementWithId('photo', HTMLCanvasElement), found, (isWhite) => {
			question.replaceChildren();
			if (isWhite) takeWhite({ ...point, sure: true });
			else takeWhite(null, say('pocket.takenBack'));
		}),
	);
}

function takeWhite(point: NeutralPoint | null, words = say('pocket.whiteTaken')): void {
	white = point;
	if (point) setMode('piece');
	judge();
	if (!photo.mask()) status.textContent = words;
	else if (!point) status.textContent = `${words} ${status.textContent}`;
}

function setMode(next: 'white' | 'piece'): void {
	mode = next;
	for (const choice of document.querySelectorAll<HTMLButtonElement>('[data-mode]'))
		choice.setAttribute('aria-pressed', String(choice.dataset.mode === next));
}

async function take(file: File | undefined): Promise<void> {
	if (!file) return;
	// Nothing can be tapped while it opens: what is tapped then would be lost with the photo before.
	const work = elementWithId('work', HTMLElement);
	const { hidden } = work;
	work.hidden = true;
	try {
		await photo.show(file);
	} catch {
		status.textContent = say('pocket.noPhoto', { name: file.name });
		work.hidden = hidden;
		return;
	}
	white = null;
	question.replaceChildren();
	answer.replaceChildren();
	work.hidden = false;
	setMode('white');
	status.textContent = say('pocket.askWhite');
}

for (const id of ['camera', 'file']) {
	const source = elementWithId(id, HTMLInputElement);
	source.addEventListener('change', () => void take(source.files?.[0]));
}
for (const choice of document.querySelectorAll<HTMLButtonElement>('[data-mode]')) {
	choice.addEventListener('click', () => setMode(choice.dataset.mode === 'white' ? 'white' : 'piece'));
}
elementWithId('again', HTMLButtonElement).addEventListener('click', () => {
	photo.clearPiece();
	answer.replaceChildren();
});
for (const told of [price, isNew]) told.addEventListener('change', judge);
showSeason(data, sought);
