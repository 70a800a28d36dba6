import type { CSSProperties } from 'react';
import { say } from '../../../../src/language/speak.ts';
import type { PaletteEdit } from '../../../../src/wardrobe/palette/palette-edit.ts';
import { PALETTE_ROLES, type PaletteColour } from '../../../../src/wardrobe/words/palette-colour.ts';
import { PaletteCard } from './palette-card.tsx';

/** The colours of a palette by what they do in it; roles that nothing has are left out. */
export function PaletteRoles({
	colours,
	merging,
	onChoose,
	onEdit,
}: {
	colours: readonly PaletteColour[];
	/** Ids of the colours to be merged. */
	merging: readonly string[];
	onChoose: (id: string, on: boolean) => void;
	onEdit: (edit: PaletteEdit) => void;
}) {
	const roles = PALETTE_ROLES.map((role) => {
		const own = colours.filter((colour) => colour.role === role);
		if (own.length === 0) return null;
		return (
			<div key={role} className="palette-role" style={{ '--colours': own.length } as CSSProperties}>
				<h3>
					{say(`palette.${role}`)} <span className="small quiet">{say(`palette.${role}What`)}</span>
				</h3>
				<ul className="palette-cards">
					{own.map((colour) => (
						<li key={colour.id}>
							<PaletteCard
								colour={colour}
								chosen={merging.includes(colour.id)}
								onChoose={(on) => onChoose(colour.id, on)}
								onEdit={onEdit}
							/>
						</li>
					))}
				</ul>
			</div>
		);
	});
	return <div className="palette-roles">{roles}</div>;
}
