import { chroma, hexFromLab, hueDegrees, type Lab65 } from '../../src/colour/lab65.ts';
import { element } from './element.ts';

/** A colour on neutral grey with its words and numbers, so that nobody has to rely on seeing the hue. */
export function swatchView(lab: Lab65, title: string, detail: string): HTMLElement {
	const patch = element('span', { class: 'patch', 'aria-hidden': 'true' });
	patch.style.backgroundColor = hexFromLab(lab);
	const numbers = `L* ${lab[0].toFixed(0)}  C* ${chroma(lab).toFixed(0)}  h ${hueDegrees(lab).toFixed(0)}°`;
	return element(
		'li',
		{ class: 'swatch' },
		element('span', { class: 'ground' }, patch),
		element(
			'span',
			{},
			element('b', {}, title),
			element('br'),
			element('small', {}, detail ? `${detail} · ${numbers}` : numbers),
		),
	);
}
