"""Draws Tidemark, a five-letter face of our own for tests: OpenType with CFF outlines, and a kerned pair.

Run: python3 tidemark.py (needs fontTools 4) writes tidemark.otf beside it.
"""
from fontTools.feaLib.builder import addOpenTypeFeaturesFromString
from fontTools.fontBuilder import FontBuilder
from fontTools.pens.t2CharStringPen import T2CharStringPen


def polygon(pen, *points):
    pen.moveTo(points[0])
    for point in points[1:]:
        pen.lineTo(point)
    pen.closePath()


def draw(name, width):
    pen = T2CharStringPen(width, None)
    if name == "H":
        polygon(pen, (60, 0), (60, 700), (160, 700), (160, 400), (440, 400), (440, 700), (540, 700),
                (540, 0), (440, 0), (440, 300), (160, 300), (160, 0))
    if name == "A":
        polygon(pen, (20, 0), (250, 700), (350, 700), (580, 0), (470, 0), (300, 520), (130, 0))
    if name == "V":
        polygon(pen, (20, 700), (130, 700), (300, 180), (470, 700), (580, 700), (350, 0), (250, 0))
    if name == "x":
        polygon(pen, (40, 0), (180, 250), (40, 500), (150, 500), (240, 340), (330, 500), (440, 500),
                (300, 250), (440, 0), (330, 0), (240, 160), (150, 0))
    if name == "o":
        pen.moveTo((50, 250))
        pen.curveTo((50, 388), (162, 500), (300, 500))
        pen.curveTo((438, 500), (550, 388), (550, 250))
        pen.curveTo((550, 112), (438, 0), (300, 0))
        pen.curveTo((162, 0), (50, 112), (50, 250))
        pen.closePath()
    return pen.getCharString()


widths = {".notdef": 500, "space": 250, "A": 600, "H": 600, "V": 600, "o": 600, "x": 480}
font = FontBuilder(1000, isTTF=False)
font.setupGlyphOrder(list(widths))
font.setupCharacterMap({ord(" "): "space", **{ord(c): c for c in "AHVox"}})
font.setupCFF("Tidemark-Regular", {}, {name: draw(name, width) for name, width in widths.items()}, {})
font.setupHorizontalMetrics({name: (width, 0) for name, width in widths.items()})
font.setupHorizontalHeader(ascent=800, descent=-200)
font.setupNameTable({"familyName": "Tidemark", "styleName": "Regular", "fullName": "Tidemark Regular",
                     "psName": "Tidemark-Regular",
                     "copyright": "The Readfall authors; Apache-2.0"})
font.setupOS2(sCapHeight=700, sxHeight=500, usWeightClass=500, fsType=8, sTypoAscender=800, sTypoDescender=-200)
font.setupPost()
addOpenTypeFeaturesFromString(font.font, "feature kern { pos A V -90; pos V A -90; pos V o -40; } kern;")
font.font["head"].created = font.font["head"].modified = 0
font.font.recalcTimestamp = False
font.save("tidemark.otf")
