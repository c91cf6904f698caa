"""The recorder: what a formula declares, what a sheet notes, and how a table reads. The formulas here are invented."""

import threading
from contextvars import copy_context
from typing import Any

import numpy as np
import pytest

from truethroat_service.engine import formula as recorder
from truethroat_service.engine.formula import Arg, Formula, Source, Table, about, cite, formula, off_the_sheet, working

ANYWHERE = Source("A book", "page 1")
MM = Arg("mm", 0, 9)


@pytest.fixture(autouse=True)
def _apart(monkeypatch: pytest.MonkeyPatch) -> None:
    """Keep the formulas made here out of the register of real ones."""
    monkeypatch.setattr(recorder, "FORMULAS", {})


def _double() -> Formula[Any]:
    """Make a formula of one argument."""

    @formula("y", "2*x", unit="mm", source=ANYWHERE, args={"x": MM})
    def double(x: Any) -> Any:
        """Twice the length.

        Said at length.
        """
        return 2.0 * x

    return double


def _half() -> Formula[Any]:
    """Make another."""

    @formula("x", "z/2", unit="mm", source=ANYWHERE, args={"z": MM})
    def half(z: Any) -> Any:
        """Half the length."""
        return z / 2.0

    return half


def test_a_formula_carries_what_its_sheet_needs() -> None:
    """Symbol, printed text, unit, source, arguments and the first line of its docstring stand beside the function."""
    double = _double()
    assert (double.symbol, double.expression, double.unit) == ("y", "2*x", "mm")
    assert double.meaning == "Twice the length"
    assert double.source is ANYWHERE
    assert dict(double.args) == {"x": MM}
    assert double.tables == ()
    assert double.__name__ == "double"
    assert double.body(3.0) == 6.0


def test_a_formula_is_registered_by_module_and_function() -> None:
    """The register finds a formula under where it was written."""
    double = _double()
    assert list(recorder.FORMULAS.items()) == [(f"{__name__}.double", double)]


def test_a_formula_without_docstring_means_nothing() -> None:
    """A missing docstring is an empty meaning, for the proofs to find."""
    bare: Formula[Any] = Formula(lambda x: x, "y", "x", "mm", ANYWHERE, {"x": MM}, ())
    assert bare.meaning == ""


@pytest.mark.parametrize("declared", [{}, {"y": MM}, {"x": MM, "y": MM}])
def test_undeclared_arguments_are_refused(declared: dict[str, Arg]) -> None:
    """Every argument of the body is declared, by its name and no other."""
    with pytest.raises(TypeError, match=r"body: takes \['x'\], declares"):

        @formula("y", "x", unit="mm", source=ANYWHERE, args=declared)
        def body(x: Any) -> Any:
            """Say nothing."""
            return x

    assert recorder.FORMULAS == {}


def test_arguments_are_declared_in_their_order() -> None:
    """Two arguments declared the other way round are refused."""
    with pytest.raises(TypeError, match=r"takes \['x', 'z'\], declares \['z', 'x'\]"):
        formula("y", "x+z", unit="mm", source=ANYWHERE, args={"z": MM, "x": MM})(_sum)


def _sum(x: Any, z: Any) -> Any:
    """Sum of two lengths."""
    return x + z


@pytest.mark.parametrize("wrong", [{}, {"z": 1.0}, {"x": 1.0, "z": 1.0}])
def test_a_wrong_call_is_refused_and_not_noted(wrong: dict[str, float]) -> None:
    """A missing, misspelt or surplus argument raises, and leaves no step behind."""
    double = _double()
    with working() as sheet, pytest.raises(TypeError):
        double(**wrong)
    assert sheet.steps == []


def test_nothing_is_noted_without_a_sheet() -> None:
    """A formula computes as well with no sheet open as with one."""
    double = _double()
    assert double(x=3.0) == 6.0
    with working() as sheet:
        pass
    assert double(x=3.0) == 6.0
    assert sheet.steps == []


def test_a_sheet_notes_steps_in_order() -> None:
    """Each call is a step: which formula, with what, giving what, in the order computed."""
    double, half = _double(), _half()
    with working() as sheet:
        double(x=half(z=3.0))
    assert [(step.formula, dict(step.arguments), step.value) for step in sheet.steps] == [
        (half, {"z": 3.0}, 1.5),
        (double, {"x": 1.5}, 3.0),
    ]


def test_columns_are_noted_by_reference() -> None:
    """A step holds the column itself, not a copy, so that recording costs per step and not per row."""
    column = np.arange(5.0)
    with working() as sheet:
        value = _double()(x=column)
    assert sheet.steps[0].arguments["x"] is column
    assert sheet.steps[0].value is value


def test_sheets_nest() -> None:
    """Calls go to the innermost sheet; the outer one goes on when it closes."""
    double, half = _double(), _half()
    with working() as outer:
        double(x=1.0)
        with working() as inner:
            half(z=4.0)
        double(x=2.0)
    assert [step.value for step in outer.steps] == [2.0, 4.0]
    assert [step.value for step in inner.steps] == [2.0]
    assert inner.steps[0].formula is half


def test_a_sheet_closes_after_an_error() -> None:
    """A calculation that fails does not leave its sheet open."""
    double = _double()
    with pytest.raises(ZeroDivisionError), working() as sheet:
        double(x=1.0 / 0.0)
    double(x=1.0)
    assert sheet.steps == []


def test_steps_say_what_they_are_about() -> None:
    """Subjects nest, end with their block, and end even when it fails."""
    double = _double()
    with working() as sheet:
        double(x=1.0)
        with about("part 1"):
            double(x=2.0)
            with about("side 2"):
                double(x=3.0)
            double(x=4.0)
        with pytest.raises(ZeroDivisionError), about("part 2"):
            double(x=1.0 / 0.0)
        double(x=5.0)
    assert [step.about for step in sheet.steps] == ["", "part 1", "side 2", "part 1", ""]


def test_a_subject_without_a_sheet_is_nothing() -> None:
    """Saying what comes next is harmless when nobody writes it down, and is not remembered."""
    double = _double()
    with about("part 1"):
        assert double(x=1.0) == 2.0
        with working() as sheet:
            double(x=2.0)
    assert [step.about for step in sheet.steps] == [""]


def test_a_new_sheet_starts_without_a_subject() -> None:
    """A nested sheet does not inherit the subject of the outer one."""
    double = _double()
    with working() as outer, about("part 1"):
        with working() as inner:
            double(x=1.0)
        double(x=2.0)
    assert [step.about for step in inner.steps] == [""]
    assert [step.about for step in outer.steps] == ["part 1"]


def test_trials_stay_off_the_sheet() -> None:
    """Evaluations made only to see how a result moves are not noted; the sheet goes on after them, even failed ones."""
    double = _double()
    with working() as sheet:
        with off_the_sheet(), about("a trial"):
            assert double(x=1.0) == 2.0
            cite(ANYWHERE)
        with pytest.raises(ZeroDivisionError), off_the_sheet():
            double(x=1.0 / 0.0)
        double(x=2.0)
    assert [(step.value, step.about) for step in sheet.steps] == [(4.0, "")]
    assert sheet.cited == []


def test_off_the_sheet_without_a_sheet() -> None:
    """With no sheet open there is none to leave."""
    with off_the_sheet():
        assert _double()(x=1.0) == 2.0


def test_a_sheet_lists_its_sources_once() -> None:
    """Formulas' sources and those cited without a formula are listed, each once."""
    words, double, half = Source("A book", "table of words"), _double(), _half()
    with working() as sheet:
        double(x=half(z=3.0))
        cite(words)
        cite(ANYWHERE)
        double(x=1.0)
        cite(words)
    assert sheet.sources() == [ANYWHERE, words]
    assert sheet.cited == [words, ANYWHERE, words]


def test_citing_without_a_sheet_is_nothing() -> None:
    """A rule cited with no sheet open is not remembered for the next one."""
    cite(ANYWHERE)
    with working() as sheet:
        pass
    assert sheet.sources() == []


def test_threads_do_not_share_a_sheet() -> None:
    """A sheet opened in one thread hears nothing of another, which has none, and none of its own calls are lost."""
    double = _double()
    seen: dict[str, list[float]] = {}
    met = threading.Barrier(2, timeout=10)

    def compute(name: str, opened: bool) -> None:
        """Note three steps while the other thread does the same."""
        if not opened:
            met.wait()
            double(x=-1.0)
            met.wait()
            return
        with working() as sheet:
            double(x=1.0)
            met.wait()
            met.wait()
            double(x=2.0)
        seen[name] = [step.value for step in sheet.steps]

    threads = [threading.Thread(target=compute, args=item) for item in (("open", True), ("none", False))]
    with working() as here:
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()
    assert seen == {"open": [2.0, 4.0]}
    assert here.steps == []


def test_a_thread_may_carry_the_context() -> None:
    """A thread handed a copy of the context notes on the sheet that was open where the copy was made."""
    double = _double()
    with working() as sheet:
        thread = threading.Thread(target=copy_context().run, args=(lambda: double(x=3.0),))
        thread.start()
        thread.join()
    assert [step.value for step in sheet.steps] == [6.0]


@pytest.mark.parametrize(
    ("source", "text"),
    [
        (Source("A book", "page 1"), "A book, page 1"),
        (Source("A book", "page 1", "from memory"), "A book, page 1, from memory"),
        (Source("A book", "page 1", "second-hand"), "A book, page 1, second-hand"),
        (Source("", "statics", "geometry"), "statics"),
        (Source("", "custom", "common practice, no source"), "custom, common practice, no source"),
    ],
)
def test_a_source_says_how_sure_it_is(source: Source, text: str) -> None:
    """A rule read in print is cited as it stands; anything less says so."""
    assert str(source) == text


def test_a_flag_is_no_number() -> None:
    """An argument of the unit "flag" is true or false."""
    assert Arg("flag").is_flag
    assert not Arg("mm").is_flag
    assert not Arg("").is_flag


STEPS = Table("steps", "mm", "mm", (3.0, 6.0), (10.0, 20.0, 30.0), ANYWHERE)


@pytest.mark.parametrize(
    ("x", "value"),
    [
        (0.0, 10.0),
        (2.9, 10.0),
        (3.0, 10.0),
        (np.nextafter(3.0, 9.0), 10.0),
        (3.0 * (1 + 0.5e-9), 10.0),
        (3.0 * (1 + 2e-9), 20.0),
        (3.1, 20.0),
        (6.0, 20.0),
        (6.0 * (1 + 2e-9), 30.0),
        (1e9, 30.0),
    ],
)
def test_a_table_reads_its_rows(x: float, value: float) -> None:
    """A limit belongs to the row it ends, noise beside it too, and the last row is open; column and float agree."""
    alone = STEPS(float(x))
    assert alone == value
    assert type(alone) is float
    column = STEPS(np.array([x, x]))
    assert isinstance(column, np.ndarray)
    assert column.tolist() == [value, value]


def test_a_table_takes_whole_numbers() -> None:
    """A whole number is read as the float it equals."""
    assert STEPS(4) == 20.0


@pytest.mark.parametrize(
    ("limits", "values"),
    [((), ()), ((3.0,), (1.0,)), ((3.0,), (1.0, 2.0, 3.0)), ((6.0, 3.0), (1.0, 2.0, 3.0))],
)
def test_a_crooked_table_is_refused(limits: tuple[float, ...], values: tuple[float, ...]) -> None:
    """A table has one value more than limits, and its limits rise."""
    with pytest.raises(ValueError, match=f"crooked: {len(values)} values for {len(limits)} limits"):
        Table("crooked", "mm", "mm", limits, values, ANYWHERE)


def test_a_table_of_one_row_is_a_constant() -> None:
    """A table without limits gives its one value."""
    assert Table("constant", "mm", "mm", (), (7.0,), ANYWHERE)(3.0) == 7.0
