import { say } from '../../src/language/speak.ts';
import { PAPER_LIGHTNESS } from '../../src/reading/light/neutral-guard.ts';
import { patternByShare } from '../../src/reading/swatches/pattern-by-share.ts';
import type { PocketData } from '../../src/wardrobe/season/pocket-data.ts';
import { KINDS, type Kind } from '../../src/wardrobe/words/kind.ts';
import type { NeutralPoint } from '../../src/wardrobe/words/reading.ts';
import { saidColour } from '../../src/wardrobe/words/said-colour.ts';
import { element, elementWithId } from './element.ts';
import { type Point, photoView } from './photo-view.ts';
import { readingInHand } from './reading-in-hand.ts';
import { swatchView } from './swatch-view.ts';
import { type Verdict, verdictOf } from './verdict.ts';
import { whiteInHand, whiteQuestion } from './white-question.ts';

const data = JSON.parse(elementWithId('data', HTMLScriptElement).textContent ?? '') as PocketData;
const status = elementWithId('status', HTMLElement);
const answer = elementWithId('answer', HTMLElement);
const question = elementWithId('question', HTMLElement);
const kindChoice = elementWithId('kind', HTMLSelectElement);
/** The white that was tapped and can be one, or null. */
let white: NeutralPoint | null = null;
let mode: 'white' | 'piece' = 'piece';

/** The word of a verdict with a mark of its own, so that nothing is told by colour alone. */
const MARKS = { fits: '●', near: '◐', off: '○', unsure: '?' } as const;

function showSeason(): void {
	elementWithId('season', HTMLElement).textContent = data.seasonName;
	elementWithId('made', HTMLElement).textContent = `Made on ${data.madeOn}. Nothing you do here leaves this phone.`;
	elementWithId('palette', HTMLElement).append(
		...data.palette.colours.map(({ lab, name, label, role, weight }) =>
			swatchView(lab, label || name, `${role}, ${Math.round(weight * 100)} %`),
		),
	);
	const wishes = data.wishes.filter((wish) => wish.state === 'open');
	elementWithId('wishes', HTMLElement).append(
		...(wishes.length === 0
			? [element('li', {}, 'No open wish. Look, but there is nothing you need.')]
			: wishes.map((wish) => {
					const limit = wish.priceLimit === null ? '' : `up to ${wish.priceLimit}`;
					return wish.target
						? swatchView(wish.target, wish.name, [saidColour(wish.target), limit].filter(Boolean).join(', '))
						: element('li', {}, wish.name, ' ', element('small', {}, limit));
				})),
	);
	elementWithId('garments', HTMLElement).append(
		...data.garments.map(({ garment, picture }) =>
			element(
				'li',
				{},
				picture ? element('img', { src: picture, alt: '', loading: 'lazy' }) : '',
				element('small', {}, garment.name),
			),
		),
	);
	kindChoice.append(...data.kinds.map((kind) => element('option', { value: kind }, KINDS[kind].label)));
}

function showVerdict({ fit, wish, sought, twins, partners, partnerCount }: Verdict, swatches: HTMLElement[]): void {
	const pictures = new Map(data.garments.map(({ garment, picture }) => [garment.id, picture]));
	const sentences = [
		...(sought
			? [
					say('candidates.fillsPicture', {
						name: sought.name,
						pictures: say('counts.pictures', { count: sought.pictures }),
					}),
				]
			: []),
		wish
			? `It answers your wish "${wish.wish.name}"${wish.wish.target ? `, ${wish.distance.toFixed(1)} from the colour you look for` : ''}.`
			: 'It answers no open wish.',
		twins.length > 0
			? `You own something like it: ${twins.map((twin) => twin.garment.name).join(', ')}.`
			: 'You own nothing like it.',
		partnerCount > 0 ? `${partnerCount} of your garments go with it:` : 'Nothing you own is known to go with it.',
	];
	answer.replaceChildren(
		element('h2', {}, `${MARKS[fit.verdict]} ${fit.verdict}`),
		element(
			'p',
			{},
			`${Math.round(fit.percent)} of 100; as far as this photo tells, between ${Math.round(fit.low)} and ${Math.round(fit.high)}.`,
		),
		element('p', {}, fit.sentence),
		element('ul', { class: 'swatches' }, ...swatches),
		...sentences.map((sentence) => element('p', {}, sentence)),
		element(
			'ul',
			{ class: 'pictures' },
			...partners.map((partner) => {
				const picture = pictures.get(partner.garmentId);
				return element(
					'li',
					{},
					picture ? element('img', { src: picture, alt: '' }) : '',
					element('small', {}, `${partner.name}: ${partner.support.sentence}`),
				);
			}),
		),
	);
}

function judge(): void {
	const mask = photo.mask();
	if (!mask) return;
	const kind = kindChoice.value as Kind;
	const reading = readingInHand(photo.inHand(), mask, kind, white ? [white] : []);
	if (!reading) return;
	const { swatches, trust, neutrals } = reading;
	// With the piece known, the white may turn out to be none: it would make the piece lighter than white.
	const refused = neutrals?.find((neutral) => neutral.answer === 'refused')?.sentence ?? '';
	const { error, reasons, advice } = trust;
	status.textContent = `${refused} Expect an error of about ${Math.round(error)} (from about 3 on, most people see a difference): ${reasons.join('; ')}. ${advice ?? ''}`;
	showVerdict(
		verdictOf(data, kind, { swatches, trust, pattern: patternByShare(swatches) }),
		swatches.map(({ lab, share, name }) => swatchView(lab, name, `${Math.round(share * 100)} % of it`)),
	);
}

const photo = photoView(elementWithId('stage', HTMLElement), elementWithId('photo', HTMLCanvasElement), () => mode, {
	white: tapWhite,
	piece: judge,
});

/** Takes what was tapped as white, asks about it, or says why it is none. */
function tapWhite(at: Point): void {
	const point = { ...at, lightness: PAPER_LIGHTNESS };
	const found = whiteInHand(photo.inHand(), point);
	question.replaceChildren();
	if (found.answer === 'taken') {
		takeWhite(point);
		return;
	}
	if (found.answer === 'refused') takeWhite(null, 'That is not taken for white: see below.');
	question.append(
		whiteQuestion(elementWithId('photo', HTMLCanvasElement), found, (isWhite) => {
			question.replaceChildren();
			if (isWhite) takeWhite({ ...point, sure: true });
			else takeWhite(null, 'Taken back. Tap something else that is white, or choose "the piece".');
		}),
	);
}

function takeWhite(
	point: NeutralPoint | null,
	words = 'The white is taken. Now tap the piece; tap again to add a part of it.',
): void {
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
	try {
		await photo.show(file);
	} catch {
		status.textContent = `Expected a photo that this browser can show; "${file.name}" is none. Try a JPEG.`;
		return;
	}
	white = null;
	question.replaceChildren();
	answer.replaceChildren();
	elementWithId('work', HTMLElement).hidden = false;
	setMode('white');
	status.textContent =
		'Is there something white in the picture, a receipt or paper? Tap it first. If not, choose "the piece" and tap that.';
}

for (const id of ['camera', 'file']) {
	const input = elementWithId(id, HTMLInputElement);
	input.addEventListener('change', () => void take(input.files?.[0]));
}
for (const choice of document.querySelectorAll<HTMLButtonElement>('[data-mode]')) {
	choice.addEventListener('click', () => setMode(choice.dataset.mode === 'white' ? 'white' : 'piece'));
}
elementWithId('again', HTMLButtonElement).addEventListener('click', () => {
	photo.clearPiece();
	answer.replaceChildren();
});
kindChoice.addEventListener('change', judge);
showSeason();
