import { say } from '../../../src/language/speak.ts';
import { YEAR_PARTS, type YearPart } from '../../../src/wardrobe/words/garment.ts';
import { Check } from './field.tsx';

/** The parts of the year that something serves, a box each. */
export function YearPartChecks({
	chosen,
	onChange,
}: {
	chosen: readonly YearPart[];
	onChange: (chosen: YearPart[]) => void;
}) {
	return YEAR_PARTS.map((part) => (
		<Check
			key={part}
			label={say(`yearParts.${part}`)}
			checked={chosen.includes(part)}
			onChange={(on) => onChange(on ? [...chosen, part] : chosen.filter((one) => one !== part))}
		/>
	));
}
