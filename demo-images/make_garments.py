"""
Renders the garments and candidates of the demo: blender -b --factory-startup -P demo-images/make_garments.py -- [FILE ...]
Without names, all of them. Needs Debian's blender, python3-numpy, python3-pil.
"""

import json
import sys
import time
from pathlib import Path

HERE = Path(__file__).resolve().parent
sys.path.insert(0, str(HERE / "studio"))
sys.dont_write_bytecode = True

from subject import photograph_garment  # noqa: E402
from wardrobe import CANDIDATES, GARMENTS  # noqa: E402

wanted = sys.argv[sys.argv.index("--") + 1 :] if "--" in sys.argv else []
truth_file = HERE / "studio" / "garment-truth.json"
for number, entry in enumerate(GARMENTS + CANDIDATES, start=1):
    if wanted and not any(entry["file"].startswith(name) for name in wanted):
        continue
    started = time.time()
    result = photograph_garment(str(HERE / entry["file"]), {**entry["photo"], "look": entry["look"], "seed": number})
    known = json.loads(truth_file.read_text()) if truth_file.exists() else {}
    known[entry["file"]] = {"truth": result["truth"], "kelvin": result["kelvin"]}
    truth_file.write_text(json.dumps(known, indent=1, sort_keys=True) + "\n")
    print(f"{entry['file']} {time.time() - started:.1f} s", flush=True)
