import type { PairedDevice } from '../../../../src/app/sharing.ts';
import { say, spokenLanguage } from '../../../../src/language/speak.ts';
import { call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { Button } from '../../parts/button.tsx';
import { Problem } from '../../parts/problem.tsx';

/** A moment as the language spoken and the reader's own clock write it. */
const momentText = (iso: string): string =>
	new Date(iso).toLocaleString(spokenLanguage(), { dateStyle: 'medium', timeStyle: 'short' });

function DeviceRow({ device, unpair }: { device: PairedDevice; unpair: () => void }) {
	return (
		<tr>
			<th scope="row">{device.device}</th>
			<td>{momentText(device.pairedAt)}</td>
			<td>{momentText(device.seenAt)}</td>
			<td>
				<Button
					small
					onPress={unpair}
					aria-label={say('door.sendAwayOne', { device: device.device, when: momentText(device.pairedAt) })}
				>
					{say('door.sendAway')}
				</Button>
			</td>
		</tr>
	);
}

/** The devices that may come in, each with when it was last seen, to be sent away one by one or all at once. */
export function DeviceList({ devices }: { devices: readonly PairedDevice[] }) {
	const unpair = useChange((id: string | null) =>
		id === null ? call('unpairDevices', {}) : call('unpairDevice', { params: { id } }),
	);
	if (devices.length === 0) return <p className="quiet">{say('door.none')}</p>;
	return (
		<div className="stack">
			<div className="table-scroll">
				<table>
					<thead>
						<tr>
							<th scope="col">{say('door.device')}</th>
							<th scope="col">{say('door.since')}</th>
							<th scope="col">{say('door.seen')}</th>
							<th scope="col">
								<span className="hidden-visually">{say('door.actions')}</span>
							</th>
						</tr>
					</thead>
					<tbody>
						{devices.map((device) => (
							<DeviceRow key={device.id} device={device} unpair={() => unpair.run(device.id)} />
						))}
					</tbody>
				</table>
			</div>
			<p className="quiet">{say('door.unused')}</p>
			<p>
				<Button onPress={() => unpair.run(null)}>{say('door.sendAllAway')}</Button>
			</p>
			<Problem of={unpair.problem} />
		</div>
	);
}
