/** The home on disk: its folder, its archives, what was amiss. */
export const HOME = {
	homeChecks: {
		unreadRows_one:
			'{{count}} entry could not be read ({{what}} "{{id}}"). It is set aside, not deleted. A backup from before may hold it whole.',
		unreadRows_other:
			'{{count}} entries could not be read, such as {{what}} "{{id}}". They are set aside, not deleted. A backup from before may hold them whole.',
		lostDecisions_one: '{{count}} decision can no longer be taken back: what it changed could not be read.',
		lostDecisions_other: '{{count}} decisions can no longer be taken back: what they changed could not be read.',
		damagedReadings_one: 'What was read of {{count}} photo was damaged: this photo is read again.',
		damagedReadings_other: 'What was read of {{count}} photos was damaged: these photos are read again.',
		otherForm_one:
			'This version of Dyelot cannot use {{count}} entry ({{what}} "{{id}}": {{fault}}). It is set aside, not deleted, and all else is here. A newer version may know it, or a backup from before hold it whole.',
		otherForm_other:
			'This version of Dyelot cannot use {{count}} entries, such as {{what}} "{{id}}" ({{fault}}). They are set aside, not deleted, and all else is here. A newer version may know them, or a backup from before hold them whole.',
	},
	home: {
		keyReused:
			'Expected a new key for a new request; the key "{{key}}" came with another one before. Nothing was changed.',
		keptBeforeUpdate:
			'Your wardrobe was kept by an earlier version of Dyelot and is brought up to date. As it was, it is kept in the file {{place}}; photos are not changed. To go back, stop the program and put that file in the place of {{database}}.',
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
		unknownKind: 'this version does not know what "{{kind}}" is',
		anotherForm: 'it is written otherwise',
		fieldOfAnotherForm: '“{{field}}” is missing or written otherwise',
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
		missing_one:
			'{{count}} photo has lost its file: "{{name}}". Its colours are kept. Add it again, or restore a backup, and it shows.',
		missing_other:
			'{{count}} photos have lost their files, such as "{{name}}". Their colours are kept. Add them again, or restore a backup, and they show.',
		changed_one:
			'{{count}} photo file is not as it was added: "{{name}}". Its colours are kept. Add the photo again, or restore a backup.',
		changed_other:
			'{{count}} photo files are not as they were added, such as "{{name}}". Their colours are kept. Add the photos again, or restore a backup.',
		unmasked_one:
			'{{count}} outline drawn by hand is lost: "{{name}}". The photo is read again without it. Draw it again where the colours are wrong.',
		unmasked_other:
			'{{count}} outlines drawn by hand are lost, such as that of "{{name}}". The photos are read again without them. Draw them again where the colours are wrong.',
		unshown_one: '{{count}} photo had lost its small pictures and is read again: "{{name}}".',
		unshown_other: '{{count}} photos had lost their small pictures and are read again, such as "{{name}}".',
		orphans_one:
			'{{count}} photo file belonged to no photo, most likely because the program was stopped while it was added. It is kept in the folder "{{folder}}": add it again if you miss it.',
		orphans_other:
			'{{count}} photo files belonged to no photo, most likely because the program was stopped while they were added. They are kept in the folder "{{folder}}": add again what you miss.',
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
