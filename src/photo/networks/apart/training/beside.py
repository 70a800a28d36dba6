"""Makes the training code of the outline network, and what all networks share, importable from here: import this first."""

import pathlib
import sys

NETWORKS = pathlib.Path(__file__).parents[2]
sys.path += [str(NETWORKS / "outline" / "training"), str(NETWORKS / "training")]
