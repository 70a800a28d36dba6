"""Makes what all networks' training shares importable from here: import this first."""

import pathlib
import sys

sys.path.append(str(pathlib.Path(__file__).parents[2] / "training"))
