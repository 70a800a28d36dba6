"""
Renders the inspirations of the demo: blender -b --factory-startup -P demo-images/make_inspirations.py -- [FILE ...]
Without names, all of them. Needs Debian's blender, python3-numpy, python3-pil.
"""

import json
import sys
import time
from pathlib import Path

HERE = Path(__file__).resolve().parent
sys.path.insert(0, str(HERE / "studio"))
sys.dont_write_bytecode = True

from board import BOARD, photograph_inspiration  # noqa: E402

wanted = sys.argv[sys.argv.index("--") + 1 :] if "--" in sys.argv else []
truth_file = HERE / "studio" / "board-truth.json"
for number, entry in enumerate(BOARD, start=1):
    if wanted and not any(entry["file"].startswith(name) for name in wanted):
        continue
    started = time.time()
    truth = photograph_inspiration(str(HERE / entry["file"]), entry, 200 + number)
    known = json.loads(truth_file.read_text()) if truth_file.exists() else {}
    known[entry["file"]] = {"truth": truth}
    truth_file.write_text(json.dumps(known, indent=1, sort_keys=True) + "\n")
    print(f"{entry['file']} {time.time() - started:.1f} s", flush=True)
