"""The convolutions of a published detector of things in photos, read from its TensorFlow Lite file (a FlatBuffer; fields as in its schema, v3)."""

import numpy as np
import torch
from flatbuffers import encode, number_types
from flatbuffers.table import Table

CONVOLUTION, DEPTHWISE, DEQUANTIZE, RESHAPE = 3, 4, 6, 22
TYPES = {0: np.float32, 1: np.float16}


class Record:
    """A table of the file; its fields by their place in the schema."""

    def __init__(self, file, place):
        self.table = Table(file, place)

    def _at(self, field):
        return self.table.Offset(4 + 2 * field)

    def number(self, field, kind):
        return self.table.Get(kind, self._at(field) + self.table.Pos) if self._at(field) else 0

    def bytes(self, field, each=1):
        start = self.table.Vector(self._at(field))
        return bytes(self.table.Bytes[start : start + each * self.table.VectorLen(self._at(field))])

    def numbers(self, field):
        return np.frombuffer(self.bytes(field, 4), np.int32).tolist()

    def records(self, field):
        start = self.table.Vector(self._at(field))
        return [Record(self.table.Bytes, self.table.Indirect(start + 4 * k)) for k in range(self.table.VectorLen(self._at(field)))]


def detector_layers(path, count):
    """(weight, bias) of the first convolutions, out x in x rows x columns, their normalisation already in them."""
    with open(path, "rb") as file:
        content = bytearray(file.read())
    model = Record(content, encode.Get(number_types.UOffsetTFlags.packer_type, content, 0))
    codes = [one.number(0, number_types.Int8Flags) for one in model.records(1)]
    graph, buffers = model.records(2)[0], model.records(4)
    tensors, operators = graph.records(0), graph.records(3)
    kinds = [codes[one.number(0, number_types.Uint32Flags)] for one in operators]
    halves = {one.numbers(2)[0]: one.numbers(1)[0] for one, kind in zip(operators, kinds) if kind == DEQUANTIZE}

    def values(place):
        tensor = tensors[halves.get(place, place)]
        stored = buffers[tensor.number(2, number_types.Uint32Flags)].bytes(0)
        return np.frombuffer(stored, TYPES[tensor.number(1, number_types.Int8Flags)]).reshape(tensor.numbers(0)).astype(np.float32)

    # What is only laid out anew is an answer for boxes or kinds, beside the layers' path.
    answers = {one.numbers(1)[0] for one, kind in zip(operators, kinds) if kind == RESHAPE}
    out = []
    for one, kind in zip(operators, kinds):
        if kind not in (CONVOLUTION, DEPTHWISE) or one.numbers(2)[0] in answers:
            continue
        weight, bias = (values(place) for place in one.numbers(1)[1:3])
        weight = weight.transpose(0, 3, 1, 2) if kind == CONVOLUTION else weight.transpose(3, 0, 1, 2)
        out.append((torch.from_numpy(weight.copy()), torch.from_numpy(bias)))
    return out[:count]
