"""`corymb new`: what it writes is right at once, and nothing is ever overwritten."""

from dataclasses import fields
from pathlib import Path

import pytest

from corymb.cli.new_studio import SITE_STAND_INS, STUDIO_STAND_INS
from corymb.studio.growing import with_stem
from corymb.studio.load import read_studio
from corymb.studio.new_files import NewStem
from corymb.studio.schema import KINDS, SHIPPED, file_name
from tests.cli.conftest import ANSWERS, Run, change, words

STARTER = SHIPPED.parent / "starter"
RECIPE = {
    "--name": "Hedge jar",
    "--style": "posy",
    "--summary": "Picked: blue # and white",
    "--difficulty": "easy",
    "--time": "20 min",
    "--across": "20 cm",
    "--high": "260 mm",
    "--vessel": "jar",
    "--vessel-name": "jar, a pint",
    "--price": "from 28",
    "--stem": "7 cosmos-white, light, essential",
}
STEM = {
    "--name": "Zinnia, lime",
    "--group": "flowers",
    "--botanical": "Zinnia elegans",
    "--use": "focal",
    "--form": "rosette",
    "--colours": "lime b5cc5a 90 %, eye e0b23c",
    "--head": "6 cm",
    "--length": "40-60 cm",
    "--weight": "12 g",
    "--in-season": "mid July - early October",
    "--vase-life": "1 week",
    "--cut-when": "the stem stays stiff when you shake it: not before",
    "--hours": "6",
    "--do": "Strip, stand deep.",
    "--stems-per-bucket": "50",
    "--cutting-step": "25",
    "--grown": "0.12",
    "--hazards": "",
    "--source": "common practice, no source",
}


def test_every_answer_finds_its_place_in_the_starter() -> None:
    house = (STARTER / "content" / "studio.yml").read_text(encoding="utf-8")
    site = (STARTER / "mkdocs.yml").read_text(encoding="utf-8")
    assert {line: house.count(line) for line in STUDIO_STAND_INS.values()} == dict.fromkeys(
        STUDIO_STAND_INS.values(), 1
    )
    assert all(site.count(line) == 1 for line in SITE_STAND_INS.values())


def test_a_new_studio_knows_the_answers_and_brings_the_schemas(studio: Path) -> None:
    read, problems = read_studio(studio / "content")
    assert read is not None
    assert problems == []
    house = read.house
    assert (house.name, house.place.name, house.contact.email) == (
        "Hazel Row",
        "Dunmallow",
        "hello@hazelrow.example",
    )
    assert (house.place.latitude, house.place.longitude) == (52.3, -7.1)
    assert (house.language, house.money.currency) == ("en-IE", "EUR")
    assert {f.name for f in (studio / "schemas").iterdir()} == {file_name(kind) for kind in KINDS}
    assert "/clients/" in (studio / ".gitignore").read_text()


def test_a_new_studio_is_told_to_be_kept_private(run: Run, tmp_path: Path) -> None:
    told = run("new", "studio", str(tmp_path / "garden"), *words(ANSWERS)).output
    assert told.endswith("What may be published is what `corymb build` puts into clients/.\n")
    assert "keep it, and a\nrepository of it, private" in told
    assert "private" in (tmp_path / "garden" / ".gitignore").read_text()


@pytest.mark.parametrize(
    "name", ["No", "Hazel: Row", 'The "Row"', "#1 Row", "Ros\u00e9 & Row", "12"]
)
def test_any_name_is_written_so_that_it_is_read_back(tmp_path: Path, run: Run, name: str) -> None:
    run("new", "studio", str(tmp_path / "s"), *words({**ANSWERS, "--name": name}))
    read, problems = read_studio(tmp_path / "s" / "content")
    assert problems == []
    assert read is not None
    assert read.house.name == name


def test_a_new_studio_asks_and_asks_again_until_it_understands(tmp_path: Path, run: Run) -> None:
    typed = "Hazel Row\nDunmallow\n52.3 N\n52.3\n-7.1\nEurope/Dublin\nen-IE\nEUR\n\n"
    result = run("new", "studio", str(tmp_path / "s"), typed=typed)
    assert result.exit_code == 0
    assert (
        "Error: ‘52.3 N’: write the latitude as a bare number, ‘52.3’; north is above 0"
        in result.output
    )
    assert "latitude: 52.3 " in (tmp_path / "s/content/studio.yml").read_text(encoding="utf-8")


def test_whoever_stops_at_a_question_has_nothing_written(tmp_path: Path, run: Run) -> None:
    result = run("new", "studio", str(tmp_path / "s"), typed="Hazel Row\n")
    assert result.exit_code == 1
    assert "\nStopped.\n" in result.output
    assert not (tmp_path / "s").exists()


def test_a_folder_with_something_in_it_is_left_alone(studio: Path, run: Run) -> None:
    (studio / "mkdocs.yml").write_text("mine")
    no_questions = run("new", "studio", str(studio))
    assert (no_questions.exit_code, no_questions.output) == (
        1,
        "Error: . is not empty; nothing was written. Name a new folder.\n",
    )
    assert (studio / "mkdocs.yml").read_text() == "mine"


def test_a_new_recipe_is_right_at_once_and_a_draft(studio: Path, run: Run) -> None:
    result = run("new", "recipe", *words(RECIPE))
    assert result.output == (
        "Written: content/recipes/posy/hedge-jar.yml\n"
        "Give it its method, then read it over: corymb check\n"
    )
    assert run("check", "--strict").output == "Nothing to put right in 8 stems and 3 recipes.\n"
    read, _ = read_studio(studio / "content")
    assert read is not None
    recipe = read.recipes["hedge-jar"]
    assert (recipe.summary, recipe.vessel.name) == ("Picked: blue # and white", "jar, a pint")
    assert str(recipe.high) == "26 cm"
    assert recipe.draft
    first = (studio / "content/recipes/posy/hedge-jar.yml").read_text().partition("\n")[0]
    assert first == "# yaml-language-server: $schema=../../../schemas/recipe.schema.json"


def test_a_new_recipe_asks_for_what_isn_t_given_and_offers_known_stems(
    studio: Path, run: Run
) -> None:
    asked = {k: v for k, v in RECIPE.items() if k not in ("--style", "--stem")}
    typed = "hand-tie\n7 cosmos-wite, light\n7 cosmos-white\n7 cosmos-white, light\n\n"
    result = run("new", "recipe", *words(asked), typed=typed)
    assert "Error: there is no stem called ‘cosmos-wite’. Did you mean ‘cosmos-white’?" in (
        result.output
    )
    assert "Error: which role? Write depth, light or accent after a comma" in result.output
    assert (studio / "content/recipes/hand-tie/hedge-jar.yml").is_file()


@pytest.mark.parametrize(
    ("kind", "answers", "told"),
    [
        pytest.param(
            "recipe",
            {**RECIPE, "--name": "Kitchen jug", "--style": "hand-tie"},
            "There is a recipe called ‘kitchen-jug’ already, in "
            "content/recipes/posy/kitchen-jug.yml. Give this one another name, or an --id of "
            "its own.",
            id="a recipe's id is taken",
        ),
        pytest.param(
            "recipe",
            {**RECIPE, "--style": "possy"},
            "There is no style called ‘possy’. Did you mean ‘posy’?",
            id="no such style",
        ),
        pytest.param(
            "recipe",
            {**RECIPE, "--stem": "7 cosmos-whit, light"},
            "--stem: there is no stem called ‘cosmos-whit’. Did you mean ‘cosmos-white’?",
            id="no such stem",
        ),
        pytest.param(
            "stem",
            {**STEM, "--name": "Hornbeam"},
            "There is a stem called ‘hornbeam’ already, in content/stems/leaf-and-grass.yml. "
            "Give this one another name, or an --id of its own.",
            id="a stem's id is taken",
        ),
        pytest.param(
            "recipe",
            {**RECIPE, "--name": "薔薇"},
            "No id can be made of ‘薔薇’: give one in letters from a to z, with --id.",
            id="a name in other letters",
        ),
        pytest.param(
            "stem",
            {**STEM, "--name": "Con"},
            "No id can be made of ‘Con’: give one in letters from a to z, with --id.",
            id="a name that Windows keeps",
        ),
        pytest.param(
            "stem",
            {**STEM, "--colours": "lime b5cc5a 90 %"},
            "The shares add up to 90 %; they should add up to 100 %.",
            id="shares don't add up",
        ),
    ],
)
def test_what_can_t_be_written_is_refused(
    studio: Path, run: Run, kind: str, answers: dict[str, str], told: str
) -> None:
    before = {file: file.read_bytes() for file in studio.rglob("*.yml")}
    result = run("new", kind, *words(answers))
    assert (result.exit_code, result.output) == (1, f"Error: {told}\n")
    assert {file: file.read_bytes() for file in studio.rglob("*.yml")} == before


@pytest.mark.parametrize("what", ["recipe", "stem"])
def test_nothing_is_asked_where_there_is_no_studio(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, run: Run, what: str
) -> None:
    monkeypatch.chdir(tmp_path)
    told = run("new", what)
    assert told.exit_code == 1
    assert told.output.startswith("Error: There is no studio here")


def test_a_hazard_that_isn_t_one_is_refused_with_the_nearest(studio: Path, run: Run) -> None:
    result = run("new", "stem", *words({**STEM, "--hazards": "thorny"}))
    assert "‘thorny’ is not a hazard. Did you mean ‘thorns’?" in result.output


def test_a_new_stem_goes_into_its_group_s_file_and_changes_nothing_else(
    studio: Path, run: Run
) -> None:
    file = studio / "content/stems/flowers.yml"
    before = file.read_text(encoding="utf-8")
    result = run("new", "stem", *words(STEM))
    assert result.output == "Written: zinnia-lime, at the end of content/stems/flowers.yml\n"
    assert file.read_text(encoding="utf-8").startswith(before.rstrip())
    assert run("check", "--strict").output == "Nothing to put right in 9 stems and 2 recipes.\n"
    read, _ = read_studio(studio / "content")
    assert read is not None
    assert [str(part) for part in read.stems["zinnia-lime"].colours] == [
        "lime b5cc5a 90 %",
        "eye e0b23c 10 %",
    ]


def test_a_new_stem_of_a_new_group_gets_a_file_and_a_long_form_its_length(
    studio: Path, run: Run
) -> None:
    answers = {
        **STEM,
        "--group": "Tall ones",
        "--form": "spike",
        "--hazards": "thorns, eye irritant",
    }
    result = run("new", "stem", *words(answers), typed="25 cm\n")
    assert result.output.endswith("Written: content/stems/tall-ones.yml\n")
    read, problems = read_studio(studio / "content")
    assert problems == []
    assert read is not None
    stem = read.stems["zinnia-lime"]
    assert str(stem.head_length) == "25 cm"
    assert stem.hazards == ["thorns", "eye irritant"]


def test_a_stem_file_that_ends_otherwise_is_left_for_the_hand(studio: Path, run: Run) -> None:
    file = studio / "content/stems/flowers.yml"
    change(file, "group: Flowers\n", "")
    file.write_text(file.read_text() + "\ngroup: Flowers\n")
    before = file.read_bytes()
    result = run("new", "stem", *words(STEM))
    assert result.exit_code == 1
    assert "its last key isn't `stems`. Add it by hand:\n  zinnia-lime:\n" in result.output
    assert file.read_bytes() == before


def test_a_file_that_could_not_be_read_is_not_written_over(studio: Path, run: Run) -> None:
    file = studio / "content/recipes/posy/hedge-jar.yml"
    file.write_text("name: [Hedge jar\n", encoding="utf-8")
    result = run("new", "recipe", *words(RECIPE))
    assert (result.exit_code, result.output) == (
        1,
        "Error: content/recipes/posy/hedge-jar.yml is there already; nothing was written.\n",
    )
    assert file.read_text(encoding="utf-8") == "name: [Hedge jar\n"


def test_nothing_new_is_written_into_a_studio_that_can_t_be_read(studio: Path, run: Run) -> None:
    change(studio / "content/studio.yml", "tagline:", "tag line:")
    result = run("new", "recipe", *words(RECIPE))
    assert result.exit_code == 1
    assert result.output.endswith("Error: 1 error; put studio.yml right first.\n")
    assert not (studio / "content/recipes/posy/hedge-jar.yml").exists()


def test_a_stem_is_not_put_into_a_file_with_errors() -> None:
    new = NewStem(**{answer.name: "" for answer in fields(NewStem)})
    with pytest.raises(ValueError) as raised:
        with_stem("group: Dahlias\nstems: {\n", new, Path("dahlias.yml"))
    assert str(raised.value) == "this file holds errors; put them right first: corymb check"
