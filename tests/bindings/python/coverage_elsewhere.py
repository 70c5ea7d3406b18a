"""What the kernel's public headers declare and Python has under another name, or not, and why.

Each name of C++ is "layer.name"; what stands for it is a path from the package, None where nothing
can.
"""

from __future__ import annotations

LITERAL = "lengths are plain numbers, with their unit in the name"
SHAPES = "hands out or takes shapes of Open CASCADE, which have no Python value"
DOCUMENTS = "for who puts sizes into documents of Open CASCADE, which have no Python value"
FILES = "how the kernel opens and writes files; the shelf reads manifests and writes reports so"
LETTERS = "Python has it: str.isascii with str.isdigit, str.lower and the like"
OPERATOR = "an operator of the value"
VALUES = "for who has no records of the kernel's: Python has"
METHOD = "a method of the value"
DESCRIBED = "what the classes of Python are made of"
PAIR = "an interval is a tuple of two numbers in Python"
KEYS = "numbers of findings have their unit at the end of the key, and sentences are texts"
LIMITS = "how look holds its settings against what it measures"

FUNCTIONS: dict[str, tuple[str | None, str]] = {
    'base.operator""_mm': (None, LITERAL),
    'base.operator""_um': (None, LITERAL),
    'base.operator""_inch': (None, LITERAL),
    "base.degrees": (None, "Python has it: math.degrees; here all angles are in degrees"),
    "base.radians": (None, "as degrees"),
    "base.describe_value": (None, DESCRIBED),
    "base.each_member": (None, DESCRIBED),
    "base.member_count": (None, DESCRIBED),
    "base.times_described": (None, DESCRIBED),
    "base.wholly_described": (None, DESCRIBED),
    "base.words": (None, DESCRIBED),
    "base.word_of": (None, "a member of an enumeration is its word"),
    **{
        f"{layer}.describe": (None, DESCRIBED)
        for layer in ("base", "standards", "mechanics", "geometry", "job", "check")
    },
    **{
        f"base.{name}": (None, KEYS)
        for name in (
            "angle", "angle_of_degrees", "cubic_millimetres", "degrees_celsius", "measure",
            "megapascal_metres_per_second", "megapascals", "metres_per_second", "micrometres",
            "millimetres", "newton_metres", "newtons", "percent", "plain_number",
            "square_millimetres", "turns_per_minute",
        )
    },
    "report.text_of": (None, KEYS),
    "report.materials_text": ("standards.materials", "the table itself"),
    "base.trimmed": (None, LETTERS),
    "base.is_ascii_digit": (None, LETTERS),
    "base.is_ascii_capital": (None, LETTERS),
    "base.is_ascii_letter": (None, LETTERS),
    "base.is_ascii_blank": (None, LETTERS),
    "base.ascii_lower": (None, LETTERS),
    "base.ascii_upper": (None, LETTERS),
    "base.same_ascii_word": (None, LETTERS),
    "base.read_bytes": (None, FILES),
    "base.without_byte_order_mark": (None, FILES),
    "base.drop_byte_order_mark": (None, FILES),
    "base.write_whole": (None, FILES),
    "base.cannot_be_written": (None, FILES),
    "base.is_same_file": (None, "Python has it: os.path.samefile"),
    "base.refuse_overwriting": (None, FILES),
    "job.screen_toml": (None, FILES),
    "base.diameter_of": (None, "lengths are plain numbers, and their names say diameter or radius"),
    "base.radius_of": (None, "as diameter_of"),
    "base.ordered": (None, PAIR),
    "base.united": (None, PAIR),
    "base.shared_length": (None, PAIR),
    "base.set_log_sink": (None, "the package sets it, to Python's logging"),
    "base.stop_asked": (None, "how the kernel hears of Ctrl-C, in interrupt_test.py"),
    "base.stop_if_asked": (None, "as stop_asked"),
    "geometry.model_of_document": (None, SHAPES),
    "geometry.model_of_shapes": (None, SHAPES),
    "geometry.feature_faces": (None, SHAPES),
    "geometry.sizes_of_document": (None, SHAPES),
    "geometry.state_size": (None, SHAPES),
    "geometry.parse_size": (None, DOCUMENTS),
    "geometry.doubt_about": (None, DOCUMENTS),
    "geometry.needs_limits": (None, DOCUMENTS),
    "geometry.most_offset": (None, LIMITS),
    "geometry.most_radial_gap": (None, LIMITS),
    "geometry.most_overlap": (None, LIMITS),
    "geometry.most_tilt": (None, LIMITS),
    "geometry.is_past": (None, LIMITS),
    "geometry.is_past_facing": (None, LIMITS),
    "geometry.operator+": ("Point.__add__", OPERATOR),
    "geometry.operator-": ("Point.__sub__", OPERATOR),
    "geometry.operator*": ("Point.__mul__", OPERATOR),
    "geometry.dot": ("Point.dot", METHOD),
    "geometry.cross": ("Point.cross", METHOD),
    "geometry.norm": ("Point.norm", METHOD),
    "geometry.unit": ("Point.unit", METHOD),
    "geometry.third": ("Point.cross", METHOD),
    "geometry.turned": (None, "how the kernel makes directions; any Point is one in Python"),
    "geometry.almost_unit": (None, "as turned"),
    "geometry.refuse_direction": (None, "as turned"),
    "geometry.any_square": ("Point.any_square", METHOD),
    "geometry.angle_between_lines": ("Point.angle_deg", METHOD + "; degrees"),
    "geometry.station": ("Line.station_mm", METHOD),
    "geometry.at_station": ("Line.at_station", METHOD),
    "geometry.distance": ("Line.distance_mm", METHOD),
    "geometry.place_point": ("Frame.place_point", METHOD),
    "geometry.place_direction": ("Frame.place_direction", METHOD),
    "geometry.place_line": ("Frame.place_line", METHOD),
    "geometry.place_box": ("Frame.place_box", METHOD),
    "geometry.compose": ("Frame.compose", METHOD),
    "geometry.inverse": ("Frame.inverse", METHOD),
    "geometry.is_mirror": ("Frame.is_mirror", METHOD),
    "geometry.is_empty": ("Box.is_empty", METHOD + ", of Region too"),
    "geometry.extend": ("Box.extended", METHOD + "; it makes a new box"),
    "geometry.grown": ("Box.grown", METHOD),
    "geometry.overlap": ("Box.overlaps", METHOD),
    "geometry.diagonal": ("Box.diagonal_mm", METHOD),
    "geometry.area": ("area_mm2", "the unit is in the name"),
    "geometry.is_usable": ("SemanticSize.usable", "a property of the value"),
    "geometry.entity_text": (None, "words for messages; the number is SemanticSize.entity"),
    "geometry.semantic_size_text": ("SemanticSize.text", "a property of the value"),
    "geometry.read_model": ("read", "the issue's own name for it"),
    "geometry.read_step": (None, "read tells by the content; a STEP file is read as by this"),
    "geometry.write_mockup": ("model", "the name of the program's verb"),
    "geometry.bounded": ("look", "the keywords seconds and memory_mb do it"),
    "geometry.is_whole": ("Look.whole", "a property of the value"),
    "check.judging_of": ("check", "given a file in place of a job"),
    "check.is_whole": ("CheckResult.whole", "a property of the value"),
    "check.judge_job": ("judge", "hands back the job with its findings, a CheckResult"),
    "check.compare_plans": ("compare", "the name of the program's verb"),
    "check.draft_job": ("draft", "the name of the program's verb"),
    "check.count_outcomes": ("CheckResult.outcomes", "a property of the value"),
    "report.fitted_text": ("Look.to_text", "its width is an argument of the method"),
    "report.look_json": ("Look.to_json", METHOD),
    "check.judged": ("judge", "by the word that judge_job has there"),
    "report.group_text": ("CheckResult.group_text", METHOD),
    "report.check_json": ("CheckResult.to_json", METHOD),
    "report.look_values": ("Look.model", VALUES),
    "report.finding_values": ("CheckResult.findings", VALUES),
    "report.look_text": ("Look.to_text", METHOD),
    "report.check_text": ("CheckResult.to_text", METHOD),
    "report.compare_text": ("Comparison.to_text", METHOD),
}

TYPES: dict[str, tuple[str | None, str]] = {
    "base.Interval": (None, PAIR),
    "base.ErrorCode": ("Error", "the classes of spotblue.errors, one for each code"),
    "base.Words": (None, DESCRIBED),
    "base.NumberRange": (None, DESCRIBED),
    "base.LogLevel": (None, "Python's own logging levels"),
    "geometry.LookSettings": ("look", "its fields are keywords of the function"),
    "geometry.LookBounds": ("look", "its fields are keywords of the function"),
    "geometry.NamedShape": (None, SHAPES),
    "geometry.DocumentModel": (None, SHAPES),
    "geometry.DocumentSize": (None, SHAPES),
    "geometry.FeatureFace": (None, SHAPES),
    "job.JobLine": (None, "lines are plain numbers"),
    "job.Outside": ("read_job", "the keyword allow_outside"),
    "job.Stock": ("StockPiece", "mechanics has stock of its own"),
    "check.Judging": ("check", "its fields are what the function is given"),
    "base.Dimension": (None, KEYS),
    "base.Measure": (None, KEYS),
    "report.Value": (None, VALUES),
    "report.Member": (None, VALUES),
    "report.TextStyle": ("Look.to_text", "its unit and width are arguments of the method"),
    "report.Colour": (None, "text for a program goes without colour"),
}
