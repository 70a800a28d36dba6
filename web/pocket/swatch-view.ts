import { hexFromLab, type Lab65 } from '../../src/colour/lab65.ts';
import { element } from './element.ts';

/** A colour on neutral grey with its words, so that nobody has to rely on seeing the hue. */
export function swatchView(lab: Lab65 | null, title: string, detail: string): HTMLElement {
	const patch = element('span', { class: 'patch', 'aria-hidden': 'true' });
	if (lab) patch.style.backgroundColor = hexFromLab(lab);
	return element(
		'li',
		{ class: 'swatch' },
		element('span', { class: lab ? 'ground' : 'any-colour' }, patch),
		element('span', {}, element('b', {}, title), element('br'), element('small', {}, detail)),
	);
}
