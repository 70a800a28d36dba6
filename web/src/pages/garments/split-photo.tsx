import { useState } from 'react';
import type { Garment } from '../../../../src/wardrobe/words/garment.ts';
import { call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { usePicture } from '../../api/pictures.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Problem } from '../../parts/problem.tsx';
import { type Box, BoxChooser } from '../../photo/box-chooser.tsx';
import '../../photo/photo-editor.css';

const HALVES: readonly [Box, Box] = [
	{ left: 0, top: 0, right: 0.5, bottom: 1 },
	{ left: 0.5, top: 0, right: 1, bottom: 1 },
];

/** A photo that shows two garments becomes two photos, each with its own garment. */
export function SplitPhoto({
	garment,
	photoId,
	onClose,
	onDone,
}: {
	garment: Garment;
	photoId: string;
	onClose: () => void;
	onDone: () => void;
}) {
	const address = usePicture(photoId, 'display');
	const [boxes, setBoxes] = useState(HALVES);
	const split = useChange(() => call('splitGarment', { params: { id: garment.id }, body: { photoId, boxes } }), onDone);
	return (
		<Dialog title="One photo, two garments" onClose={onClose}>
			<div className="stack">
				<p>
					Draw a box round each garment. The first keeps all that you told of this entry; the second becomes a garment
					of its own. Undo puts them back together.
				</p>
				{address ? (
					<div className="split-columns">
						{boxes.map((box, index) => (
							<section
								key={index === 0 ? 'first' : 'second'}
								aria-label={index === 0 ? 'First garment' : 'Second garment'}
							>
								<h3>{index === 0 ? 'First garment' : 'Second garment'}</h3>
								<BoxChooser
									address={address}
									box={box}
									label="The photo with a box round one garment"
									onChange={(next) => setBoxes(index === 0 ? [next, boxes[1]] : [boxes[0], next])}
								/>
							</section>
						))}
					</div>
				) : null}
				<Button look="main" onPress={() => split.run(undefined)} isPending={split.busy} isDisabled={!address}>
					Make two garments of it
				</Button>
				<Problem of={split.problem} />
			</div>
		</Dialog>
	);
}
