/** The home on disk: its folder, its archives, what was amiss. */
export const HOME = {
	homeChecks: {
		unreadRows_one:
			'{{count}} entry could not be read, {{kind}} "{{id}}": it is set aside in the database, not deleted. A backup may still have it whole.',
		unreadRows_other:
			'{{count}} entries could not be read, for example {{kind}} "{{id}}": they are set aside in the database, not deleted. A backup may still have them whole.',
		lostDecisions_one: '{{count}} decision can no longer be taken back: what it changed could not be read.',
		lostDecisions_other: '{{count}} decisions can no longer be taken back: what they changed could not be read.',
		damagedReadings_one: 'What was read of {{count}} photo was damaged: this photo is read again.',
		damagedReadings_other: 'What was read of {{count}} photos was damaged: these photos are read again.',
		otherForm_one:
			'{{count}} entry has another form than this program knows, {{kind}} "{{id}}" ({{what}}): it is set aside in the database, not deleted, and the rest of the wardrobe shows. A newer program or a backup may still know it.',
		otherForm_other:
			'{{count}} entries have another form than this program knows, for example {{kind}} "{{id}}" ({{what}}): they are set aside in the database, not deleted, and the rest of the wardrobe shows. A newer program or a backup may still know them.',
	},
	home: {
		keyReused:
			'Expected a new key for a new request; the key "{{key}}" came with another one before. Nothing was changed.',
		keptBeforeUpdate:
			'This home was made by an earlier version of Dyelot and is brought up to date. Its database as it was is kept in {{place}}; photos are not changed. To go back, stop the program and put that file in the place of {{database}}.',
		damagedDecision:
			'Expected to read what the last decision changed; it is not of the form that this program writes. It cannot be taken back.',
		noFolder:
			'Expected a folder for your wardrobe in "{{path}}"; {{what}}. Choose another folder with --home, or put this right first.',
		isFile: 'there is a file of that name',
		isDeadLink: 'there is a link that leads nowhere',
		mayNotMake: 'the system does not let a folder be made there',
		noneThere:
			'Expected a wardrobe in "{{path}}"; there is none. Name its folder with --home, or begin one with "dyelot serve".',
		notWritable: 'its database cannot be opened for writing (is the disk write-protected?)',
		locked:
			'Expected a home that no other program uses; {{path}} is in use by another Dyelot that is running. Close that one first, or choose another folder with --home.',
		storeAnswered: 'Expected the object store to answer {{method}} of {{key}}; it answered {{status}} {{text}}',
		storeSilent: 'Expected the object store to answer {{method}} of {{key}}; it did not ({{cause}}).',
		originalMissing: 'Expected the original of photo {{id}} in the object store; it is missing.',
		damaged:
			'Expected a whole database in {{path}}; it is damaged ({{what}}). Nothing was changed. Restore your last backup into a new folder with "dyelot restore".',
		notPrivate:
			'Expected a home that only you may read; the disk or the owner of {{path}} does not allow to set that. Others who use this computer may see your wardrobe: choose a folder of your own with --home.',
		unknownKind: '"{{kind}}" is no kind of thing that this program knows',
		anotherForm: 'it is of another form',
		fieldOfAnotherForm: 'the field “{{field}}” is missing or of another form',
		later:
			'Expected a home made by this version of Dyelot or an earlier one; this home was made by a later one. Nothing was changed: start the newer program.',
	},
	archives: {
		noEnd: 'Expected a list of checksums in {{archive}}; its list has no end.',
		notOurs: 'Expected an archive made by "dyelot backup"; {{archive}} begins with something else.',
		otherForm:
			'Expected an archive of form {{known}}; {{archive}} has form {{form}}. Restore it with the program that made it.',
		otherInside:
			'Expected the database of a wardrobe as this program writes it in {{archive}}; it holds something else ({{what}}).',
		otherFiles: 'Expected only files of a home in {{archive}}; it holds "{{name}}".',
		later:
			'Expected an archive made by this version of Dyelot or an earlier one; {{archive}} was made by a later one. Nothing was changed: restore it with the newer program.',
		cut: 'Expected a whole archive in {{archive}}; it cannot be read to its end ({{error}}).',
		noSums: 'Expected an archive with its checksums at the end; {{archive}} has none: it was cut off.',
		notAsSaved: 'Expected "{{path}}" in {{archive}} as it was saved; it is {{what}}.',
		tooFew: 'Expected the {{stated}} files that {{archive}} lists, the database among them; it holds {{found}}.',
		expected: 'Expected an archive made by "dyelot backup" in "{{archive}}"',
		isFolder: '{{expected}}; it is a folder.',
		notEmpty_one:
			'Expected an empty folder to restore into; {{home}} holds {{count}} thing already. Nothing was changed.',
		notEmpty_other:
			'Expected an empty folder to restore into; {{home}} holds {{count}} things already. Nothing was changed.',
		thisFile: 'this file',
	},
	lostPhotos: {
		missing:
			'Expected the original of this photo as it was added; its file is missing. What was read of it is kept. Restore it from a backup, or add the photo again.',
		changed:
			'Expected the original of this photo as it was added; its file has another length. What was read of it is kept. Restore it from a backup, or add the photo again.',
	},
	photoChecks: {
		missing_one: '{{count}} photo has lost its file; what was read of it is kept: "{{name}}".',
		missing_other: '{{count}} photos have lost their file; what was read of them is kept, for example "{{name}}".',
		changed_one: '{{count}} photo file is not as it was added; what was read of it is kept: "{{name}}".',
		changed_other:
			'{{count}} photo files are not as they were added; what was read of them is kept, for example "{{name}}".',
		unmasked_one: '{{count}} outline drawn by hand has lost its file; this photo is read again without: "{{name}}".',
		unmasked_other:
			'{{count}} outlines drawn by hand have lost their file; these photos are read again without, for example "{{name}}".',
		unshown_one: '{{count}} photo had lost its small pictures: it is read again, "{{name}}".',
		unshown_other: '{{count}} photos had lost their small pictures: they are read again, for example "{{name}}".',
		orphans_one:
			'{{count}} photo file belonged to no photo (a stop in the middle of adding it): it is kept in the folder "{{folder}}".',
		orphans_other:
			'{{count}} photo files belonged to no photo (a stop in the middle of adding them): they are kept in the folder "{{folder}}".',
	},
	systemErrors: {
		EACCES: 'you may not read or change it',
		EBUSY: 'another program uses it',
		EDQUOT: 'your share of the disk is full',
		EEXIST: 'it is there already',
		EIO: 'the disk reports an error',
		EISDIR: 'it is a folder',
		ELOOP: 'it is a link that leads to itself',
		EMFILE: 'too many files are open',
		ENAMETOOLONG: 'its name is too long',
		ENOENT: 'there is no such file or folder',
		ENOSPC: 'the disk is full',
		ENOTDIR: 'a part of its path is a file, no folder',
		ENOTEMPTY: 'it is a folder that is not empty',
		EPERM: 'the system does not allow it',
		EROFS: 'its disk can only be read',
		EXDEV: 'it lies on another disk',
		other: 'the system refuses ({{code}})',
		use: 'Expected to use "{{path}}"; {{meaning}}.',
		useDisk: 'Expected to use the disk; {{meaning}}.',
	},
} as const;
