import { say } from '../../../src/language/speak.ts';
import type { PhotoRecord } from '../../../src/store/store.ts';
import { call } from '../api/call.ts';
import { useChange } from '../api/change.ts';
import { Button } from '../parts/button.tsx';

/** Where a photo's reading stands, when it is not simply read: being read, or failed with its reason and another try. */
export function ReadingNote({ photo }: { photo: PhotoRecord | undefined }) {
	const retry = useChange(() => call('readAgain', { params: { id: photo?.id ?? '' } }));
	if (!photo || photo.status === 'read') return null;
	if (photo.status === 'waiting') return <p className="small quiet italic">{say('photo.beingRead')}</p>;
	return (
		<div className="small">
			<p className="warn">{photo.failure?.message ?? say('photo.notRead')}</p>
			<Button small onPress={() => retry.run(undefined)} isPending={retry.busy}>
				{say('photo.again')}
			</Button>
		</div>
	);
}
