# One door to everything. `make` alone lists the words.
PY     ?= python3
VENV   := .venv
BIN    := $(VENV)/bin
CARD   ?= src/wintertight/demo/cards/middle-travel-trailer.toml
JOBS   ?= 2

# Debian's python3 brings venv but not ensurepip: the system's pip installs into the environment.
PIP     = $(PY) -m pip --disable-pip-version-check --no-input --python $(BIN)/python install --quiet
# set_up(extras, what is said): one line before, one line after with the price.
set_up  = @begin=$$(date +%s); echo "$(2)"; $(PIP) --editable '.$(1)' && touch $@ && \
	echo "  done in $$(($$(date +%s) - begin)) s; $(VENV) holds $$(du -sm $(VENV) | cut -f1) MB"

.DEFAULT_GOAL := words
.NOTPARALLEL:
.DELETE_ON_ERROR:

.PHONY: words
words: ## list the words this Makefile knows
	@grep -hE '^[a-z-]+:.*## ' $(MAKEFILE_LIST) | awk 'BEGIN {FS = ":.*## "} {printf "  make %-8s %s\n", $$1, $$2}'

$(BIN)/python:
	@$(PY) -m pip --version >/dev/null 2>&1 || { echo "$(PY) has no pip; on Debian: apt install python3-pip" >&2; exit 1; }
	@$(PY) -m venv --without-pip $(VENV)

$(VENV)/.run: pyproject.toml | $(BIN)/python
	$(call set_up,,Setting up $(VENV) to run (once; 70 MB to fetch) ...)

$(VENV)/.test: pyproject.toml | $(BIN)/python
	$(call set_up,[test],Setting up $(VENV) to test (once; up to 290 MB to fetch) ...)
	@touch $(VENV)/.run

.PHONY: plan
plan: $(VENV)/.run ## set up, plan the bundled coach, write its job sheet (CARD=... for another)
	@mkdir -p out
	@$(BIN)/wintertight plan $(CARD) --pdf out/job-sheet.pdf

.PHONY: test
test: $(VENV)/.test ## set up and run every test, and every example in the documentation
	@$(BIN)/pytest -n $(JOBS) --doctest-modules src tests

.PHONY: lint
lint: $(VENV)/.test ## lint, format, types, layers
	@echo "Lint, format, types, layers ..."
	@$(BIN)/ruff check --quiet --output-format concise
	@$(BIN)/ruff format --check --quiet
	@$(BIN)/mypy --no-error-summary
	@$(BIN)/lint-imports --no-logo >/dev/null || $(BIN)/lint-imports --no-logo

.PHONY: check
check: lint ## fast: lint, and examples, unit and architecture tests but the long ones
	@echo "Examples, unit and architecture tests, without the long ones ..."
	@$(BIN)/pytest --quiet -n $(JOBS) -m "not long" --doctest-modules src tests/unit tests/architecture

.PHONY: bench
bench: $(VENV)/.test ## measure, each figure as a ratio against a reference in the same run
	@$(BIN)/python -m bench

.PHONY: soak
soak: $(VENV)/.test ## long sweeps: ten thousand cards with something wrong in them
	@OPENBLAS_NUM_THREADS=1 $(BIN)/python -m soak

.PHONY: docs
docs: $(VENV)/.test ## write the generated manual pages anew
	@OPENBLAS_NUM_THREADS=1 $(BIN)/python -m docs.generate

.PHONY: mutants
mutants: $(VENV)/.test ## change the physics one place at a time and see which changes no test notices (hours)
	@$(PIP) mutmut
	@OPENBLAS_NUM_THREADS=1 PYTHONDONTWRITEBYTECODE=1 nice $(BIN)/python -m mutmut run --max-children $(JOBS)
	@$(BIN)/python -m mutmut results
