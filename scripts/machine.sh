# What Stillroom needs of a machine: found, or installed by apt after saying so, or named for the person to install.
# Sourced by ./stillroom, ./check and bench/run. Everything said goes to standard error.

least_java=17
least_maven=3.8.7

say() { printf '%s\n' "stillroom: $*" >&2; }

# Major version of the Java compiler in a home, or nothing.
javac_major() {
    local version
    version=$("$1/bin/javac" -version 2>&1) || return 0
    version=${version#javac }
    printf '%s' "${version%%[!0-9]*}"
}

is_jdk() {
    local major
    [ -x "$1/bin/java" ] && [ -x "$1/bin/javac" ] || return 1
    major=$(javac_major "$1")
    [ -n "$major" ] && [ "$major" -ge "$least_java" ]
}

# Sets jdk to the home of a JDK: JAVA_HOME first, then the path, then where Debian keeps them.
find_jdk() {
    local home on_path
    jdk=
    if [ -n "${JAVA_HOME:-}" ]; then
        if is_jdk "$JAVA_HOME"; then
            jdk=$JAVA_HOME
            return 0
        fi
        say "JAVA_HOME is $JAVA_HOME, which is no JDK of version $least_java or later; looking elsewhere."
    fi
    on_path=$(command -v javac || true)
    [ -z "$on_path" ] || on_path=$(readlink -f "$on_path")
    for home in "${on_path%/bin/javac}" /usr/lib/jvm/*; do
        if [ -n "$home" ] && is_jdk "$home"; then
            jdk=$home
            return 0
        fi
    done
    return 1
}

# Needs jdk; says whether the Maven on the path is new enough.
find_maven() {
    local version
    command -v mvn >/dev/null || return 1
    version=$(JAVA_HOME=$jdk mvn -B -v 2>/dev/null | sed -n 's/.*Apache Maven \([0-9.]*\).*/\1/p')
    [ -n "$version" ] && [ "$(printf '%s\n' "$least_maven" "$version" | sort -V | head -n 1)" = "$least_maven" ]
}

find_chromium() {
    chromium=${CHROMIUM:-$(command -v chromium || command -v chromium-browser || command -v google-chrome || true)}
    [ -n "$chromium" ] && [ -x "$chromium" ]
}

# Says whether as_root can work, without asking for anything.
may_be_root() {
    [ "$(id -u)" = 0 ] && return 0
    command -v sudo >/dev/null || return 1
    sudo -n true 2>/dev/null || { [ -t 0 ] && [ -t 2 ]; }
}

# Runs a command as root; sudo may ask the person for a password where there is a person to ask.
as_root() {
    if [ "$(id -u)" = 0 ]; then
        "$@"
    else
        sudo "$@"
    fi
}

# apt_get ARGUMENTS...: apt-get that asks nothing and waits for another one to end.
apt_get() { as_root env DEBIAN_FRONTEND=noninteractive apt-get -q -o DPkg::Lock::Timeout=300 "$@" >&2; }

# install WHAT PACKAGE...: installs the first of the packages that this Debian has, after saying so.
install() {
    local what=$1 package
    shift
    if ! command -v apt-get >/dev/null; then
        say "needs $what, and this machine has no apt-get. Install $what and start again."
        return 1
    fi
    if ! may_be_root; then
        say "needs $what, which this machine lacks. As root run: apt-get update && apt-get install $1"
        return 1
    fi
    say "needs $what, which this machine lacks; installing it with apt-get (package $1)."
    apt_get update || say "the package lists could not be brought up to date; going on with those that are there."
    for package in "$@"; do
        [ -n "$(apt-cache madison "$package" 2>/dev/null)" ] || continue
        [ "$package" = "$1" ] || say "this machine has no package $1; installing $package."
        apt_get -y install --no-install-recommends "$package" && return 0
        break
    done
    say "$what could not be installed. As root run: apt-get update && apt-get install $1"
    return 1
}

need_jdk() {
    find_jdk && return 0
    install "a JDK of version $least_java or later" \
        openjdk-17-jdk-headless openjdk-21-jdk-headless default-jdk-headless && find_jdk
}

need_maven() {
    find_maven && return 0
    install "Maven of version $least_maven or later" maven || return 1
    find_maven && return 0
    say "the Maven that apt-get installed is older than $least_maven. Install Maven $least_maven or later and start again."
    return 1
}

need_chromium() {
    find_chromium && return 0
    install "the browser Chromium, for the tests in a real browser" chromium && find_chromium
}

# maven LOG ARGUMENTS...: runs Maven at the root, once more without the network when that is what failed.
maven() {
    local log=$1
    shift
    (cd "$root" && JAVA_HOME=$jdk mvn -B -ntp -Dstyle.color=never "$@") >"$log" 2>&1 </dev/null && return 0
    grep -qE 'Could not (transfer|resolve|find) |Unknown host|could not be resolved' "$log" || return 1
    say "Maven did not reach its repository; trying with what was downloaded before."
    (cd "$root" && JAVA_HOME=$jdk mvn -B -ntp -o -Dstyle.color=never "$@") >"$log" 2>&1 </dev/null
}
