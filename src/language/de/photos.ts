/** What a photo file is refused for. */
export const PHOTOS = {
	photoFiles: {
		transparent: 'Erwartet wurde etwas zu sehen auf dem Foto; alles ist durchsichtig.',
		unopened: 'Erwartet wurde ein Foto, das sich öffnen lässt, für „{{path}}“; {{what}}.',
		tooManyPixels: 'Erwartet wurden höchstens {{most}} Megapixel für ein Foto; dieses hat {{shown}}.',
		undecoded:
			'Erwartet wurde ein ganzes Foto; dieses {{format}} lässt sich nicht bis zum Ende entschlüsseln ({{error}}).',
		empty: 'Erwartet wurde {{formats}}; die Datei ist leer.',
		tooManyBytes: 'Erwartet wurden höchstens {{most}} für ein Foto; diese Datei hat {{shown}}.',
		svg: 'Erwartet wurde {{formats}}; dies ist eine SVG-Zeichnung, die keinen Stoff zeigt.',
		noPhoto: 'Erwartet wurde {{formats}}; die Bytes dieser Datei sind keines, wie auch immer sie heißt.',
		otherFormat: 'Erwartet wurde {{formats}}; diese Datei ist {{format}}.',
		tooSlow: 'Erwartet wurde, dieses Foto in {{seconds}} s zu lesen; es dauerte länger und wurde angehalten.',
		crashed: 'Erwartet wurde, dieses Foto zu lesen; der Leser brach daran zusammen ({{cause}}). Die Datei bleibt.',
		closing: 'das Programm schließt',
		formats: 'ein Foto (JPEG, PNG, WebP, AVIF, GIF, TIFF oder HEIC)',
		megabytes: '{{size}} MB',
	},
	unopened: {
		EACCES: 'du darfst es nicht lesen',
		EISDIR: 'es ist ein Ordner',
		ENOENT: 'es gibt keine solche Datei',
		ENOTDIR: 'ein Teil des Pfads ist eine Datei, kein Ordner',
		other: 'das System weigert sich ({{code}})',
	},
};
