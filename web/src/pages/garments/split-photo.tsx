import { useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
import type { Garment } from '../../../../src/wardrobe/words/garment.ts';
import { call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { usePhotos } from '../../api/photos.ts';
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

const NAMES = ['first-garment', 'second-garment'] as const;

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
	const proposed = usePhotos([photoId]).get(photoId)?.reading?.proposal?.boxes;
	const [drawn, setDrawn] = useState<readonly [Box, Box] | null>(null);
	const boxes = drawn ?? proposed ?? HALVES;
	const split = useChange(
		() => call('splitGarment', { params: { id: garment.id }, body: { photoId, boxes: [...boxes] } }),
		onDone,
	);
	return (
		<Dialog title={say('garment.twoTitle')} onClose={onClose}>
			<div className="stack">
				<p>{say(proposed ? 'garment.twoProposed' : 'garment.twoHow')}</p>
				{address ? (
					<div className="split-columns">
						{boxes.map((box, index) => (
							<section key={NAMES[index]} aria-labelledby={NAMES[index]}>
								<h3 id={NAMES[index]}>{say(index === 0 ? 'garment.first' : 'garment.second')}</h3>
								<BoxChooser
									address={address}
									box={box}
									label={say('garment.box')}
									onChange={(next) => setDrawn(index === 0 ? [next, boxes[1]] : [boxes[0], next])}
								/>
							</section>
						))}
					</div>
				) : null}
				<Button look="main" onPress={() => split.run(undefined)} isPending={split.busy} isDisabled={!address}>
					{say('garment.makeTwo')}
				</Button>
				<Problem of={split.problem} />
			</div>
		</Dialog>
	);
}
