import type { PairedDevice } from '../../../../src/app/sharing.ts';
import { call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { Button } from '../../parts/button.tsx';
import { Problem } from '../../parts/problem.tsx';

/** A moment as the reader's own language and clock write it. */
const momentText = (iso: string): string =>
	new Date(iso).toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' });

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
					aria-label={`Send away the ${device.device} let in ${momentText(device.pairedAt)}`}
				>
					Send away
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
	if (devices.length === 0) return <p className="quiet">None yet.</p>;
	return (
		<div className="stack">
			<div className="table-scroll">
				<table>
					<thead>
						<tr>
							<th scope="col">Device</th>
							<th scope="col">Let in</th>
							<th scope="col">Last seen</th>
							<th scope="col">
								<span className="hidden-visually">Actions</span>
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
			<p className="quiet">A device that is not used for 30 days is sent away by itself.</p>
			<p>
				<Button onPress={() => unpair.run(null)}>Send all away</Button>
			</p>
			<Problem of={unpair.problem} />
		</div>
	);
}
